package shinline.cli.words;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.util.Elements;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The program's own sources as syntax trees. */
record MainSources(List<CompilationUnitTree> files, Trees trees, Elements elements) {
  private static final List<String> MODULES = List.of("vision", "metrics", "ui-cli");

  /** Of all three modules, without types. */
  static MainSources parsed() {
    return of(MODULES.stream().flatMap(MainSources::sources).toList(), Depth.SYNTAX);
  }

  /** Of the module that holds the words, with types. */
  static MainSources typed() {
    return of(sources("ui-cli").toList(), Depth.TYPES);
  }

  /** One file that a test makes up, without types. */
  static MainSources example(String text) {
    JavaFileObject file =
        new SimpleJavaFileObject(URI.create("mem:/Example.java"), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
          }
        };
    return read(ToolProvider.getSystemJavaCompiler(), null, List.of(file), Depth.SYNTAX);
  }

  private enum Depth {
    SYNTAX,
    TYPES
  }

  private static MainSources of(List<Path> files, Depth depth) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null);
    return read(compiler, manager, manager.getJavaFileObjectsFromPaths(files), depth);
  }

  private static MainSources read(
      JavaCompiler compiler,
      StandardJavaFileManager manager,
      Iterable<? extends JavaFileObject> files,
      Depth depth) {
    List<String> options =
        List.of("-proc:none", "-encoding", "UTF-8", "-cp", System.getProperty("java.class.path"));
    JavacTask task =
        (JavacTask) compiler.getTask(null, manager, unread -> {}, options, null, files);
    try {
      List<CompilationUnitTree> units = new ArrayList<>();
      task.parse().forEach(units::add);
      if (depth == Depth.TYPES) {
        task.analyze();
      }
      return new MainSources(units, Trees.instance(task), task.getElements());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<Path> sources(String module) {
    // Tests run in the folder of their module.
    Path root = Path.of("..", module, "src", "main", "java");
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(f -> f.toString().endsWith(".java")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
