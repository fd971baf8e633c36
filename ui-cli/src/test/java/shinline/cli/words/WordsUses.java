package shinline.cli.words;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/** Where the sources ask for words: which keys, and with how many arguments. */
final class WordsUses extends TreePathScanner<Void, Void> {

  /** Whether a text must take every argument. */
  enum Fit {
    EXACT,
    /** What is said of a kind need not use all. */
    AT_MOST
  }

  /**
   * @param where source file, for messages
   * @param arguments how many are given
   */
  record Use(String where, String key, int arguments, Fit fit) {}

  private static final String WORDS = Words.class.getName();
  private static final String MARKUP = "shinline.cli.report.Markup";

  /** Methods whose first argument is a key. */
  private static final Set<String> KEYED = Set.of("say", "lines");

  private final MainSources sources;
  private final List<Use> uses = new ArrayList<>();
  private final Set<String> literals = new LinkedHashSet<>();
  private final List<String> open = new ArrayList<>();

  private WordsUses(MainSources sources) {
    this.sources = sources;
  }

  static WordsUses in(MainSources sources) {
    WordsUses scan = new WordsUses(sources);
    for (CompilationUnitTree unit : sources.files()) {
      scan.scan(unit, null);
    }
    return scan;
  }

  /** Uses whose key is written where it is used. */
  List<Use> uses() {
    return uses;
  }

  /** Every text written in the sources: a key may be handed on as an argument. */
  Set<String> literals() {
    return literals;
  }

  /** Beginnings of keys whose end is found while the program runs. */
  List<String> open() {
    return open;
  }

  @Override
  public Void visitLiteral(LiteralTree node, Void unused) {
    if (node.getValue() instanceof String text) {
      literals.add(text);
    }
    return null;
  }

  @Override
  public Void visitMethodInvocation(MethodInvocationTree node, Void unused) {
    if (sources.trees().getElement(getCurrentPath()) instanceof ExecutableElement method) {
      String owner = ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
      String name = method.getSimpleName().toString();
      if (owner.equals(WORDS) && KEYED.contains(name)
          || owner.equals(MARKUP) && name.equals("words")) {
        keyed(node, node.getArguments().get(0));
      } else if (owner.equals(WORDS) && name.equals("of")) {
        ofKind(node);
      }
    }
    return super.visitMethodInvocation(node, unused);
  }

  private void keyed(MethodInvocationTree call, ExpressionTree key) {
    if (key instanceof ConditionalExpressionTree choice) {
      keyed(call, choice.getTrueExpression());
      keyed(call, choice.getFalseExpression());
    } else if (key instanceof LiteralTree literal && !spread(call)) {
      uses.add(
          new Use(where(), (String) literal.getValue(), call.getArguments().size() - 1, Fit.EXACT));
    } else if (key instanceof BinaryTree joined
        && joined.getLeftOperand() instanceof LiteralTree beginning) {
      open.add((String) beginning.getValue());
    }
  }

  /** Whether the arguments are handed on as an array, whose length the source does not tell. */
  private boolean spread(MethodInvocationTree call) {
    List<? extends ExpressionTree> arguments = call.getArguments();
    return arguments.size() == 2 && type(arguments.get(1)).getKind() == TypeKind.ARRAY;
  }

  private void ofKind(MethodInvocationTree call) {
    List<? extends ExpressionTree> arguments = call.getArguments();
    if (!(type(arguments.get(0)) instanceof DeclaredType kinds
        && kinds.asElement().getKind() == ElementKind.ENUM
        && arguments.get(1) instanceof LiteralTree aspect)) {
      if (!where().equals("Words.java")) {
        throw new AssertionError(where() + ": an enum and a written aspect wanted in " + call);
      }
      return;
    }
    for (Enum<?> kind : constants((TypeElement) kinds.asElement())) {
      String key = Words.key(kind, (String) aspect.getValue());
      uses.add(new Use(where(), key, arguments.size() - 2, Fit.AT_MOST));
    }
  }

  private List<? extends Enum<?>> constants(TypeElement type) {
    String name = sources.elements().getBinaryName(type).toString();
    try {
      return Stream.of(Class.forName(name).getEnumConstants()).map(c -> (Enum<?>) c).toList();
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  private TypeMirror type(Tree node) {
    return sources.trees().getTypeMirror(new TreePath(getCurrentPath(), node));
  }

  private String where() {
    String path = getCurrentPath().getCompilationUnit().getSourceFile().toUri().getPath();
    return path.substring(path.lastIndexOf('/') + 1);
  }
}
