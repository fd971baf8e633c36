import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Build step, run from source: a folder and a zip for each system, ready to run. The one for the
 * system that builds brings its own Java; the others need one, since only a JDK's own system can be
 * cut from it. Of the video libraries only what this program loads is taken, and no debug symbols.
 *
 * <p>Arguments: the project's folder, the folder of the libraries, the folder of the other systems'
 * libraries, the folder to write to, the version, the time of every file in the zips.
 */
public final class AssembleApp {

  /** A system, in the words of each library. */
  private enum Target {
    LINUX_X64("linux-x64", "linux-x86_64", "linux-x64", "linux-x86-64"),
    WINDOWS_X64("windows-x64", "windows-x86_64", "win-x64", "win32-x86-64"),
    MACOS_X64("macos-x64", "macosx-x86_64", "osx-x64", "darwin-x86-64"),
    MACOS_ARM64("macos-arm64", "macosx-arm64", "osx-aarch64", "darwin-aarch64");

    private final String word;
    private final String ofBytedeco;
    private final String ofOnnxRuntime;
    private final String ofJna;

    Target(String word, String ofBytedeco, String ofOnnxRuntime, String ofJna) {
      this.word = word;
      this.ofBytedeco = ofBytedeco;
      this.ofOnnxRuntime = ofOnnxRuntime;
      this.ofJna = ofJna;
    }

    boolean isThisSystem() {
      String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
      String arch = System.getProperty("os.arch").equals("aarch64") ? "arm64" : "x64";
      String family =
          name.startsWith("mac") ? "macos" : name.startsWith("windows") ? "windows" : "linux";
      return word.equals(family + "-" + arch);
    }

    static boolean ofAnySystem(String jar) {
      return Stream.of(values()).anyMatch(t -> jar.endsWith("-" + t.ofBytedeco + ".jar"))
          || jar.endsWith("-linux-arm64.jar");
    }
  }

  /** Native files of these names are loaded, or linked by those that are. */
  private static final Pattern LOADED =
      Pattern.compile(
          "(lib)?(jni)?(avcodec|avformat|avutil|swresample|swscale)[-.].*"
              + "|lib(va|va-drm|drm|atomic)\\..*"
              + "|(lib)?(jni)?opencv_(core|imgproc|imgcodecs|videoio|calib3d|features2d|flann|dnn|video)[0-9]*\\..*"
              + "|(lib)?(jni)?openblas\\..*|lib(gfortran|quadmath|gcc_s)\\..*"
              + "|(lib)?jnijavacpp\\..*|(api-ms-|concrt|libomp|msvcp|ucrtbase|vc).*\\.dll");

  /** Nothing loads this, but on macOS it is linked by those that are loaded. */
  private static final Pattern LOADED_ON_MACOS =
      Pattern.compile("libopencv_highgui\\..*");

  private static final Pattern NATIVE = Pattern.compile(".*\\.(dll|dylib|so)(\\.[0-9.]+)?");

  /** On every Linux that has a desktop, and nothing to copy. */
  private static final Pattern EVERYWHERE =
      Pattern.compile("(ld-linux.*|lib(c|m|dl|rt|z|pthread|gcc_s|stdc\\+\\+))\\.so.*");

  private static final List<String> PAGES = List.of("install.md", "filming.md", "privacy.md");
  private static final String SAMPLE = "plain1-bench-shallow.mp4";
  private static final int MEGABYTE = 1_000_000;

  private final Path project;
  private final Path libraries;
  private final Path others;
  private final Path out;
  private final String version;
  private final FileTime time;

  private AssembleApp(String[] words) {
    project = Path.of(words[0]).toAbsolutePath().normalize();
    libraries = Path.of(words[1]).toAbsolutePath().normalize();
    others = Path.of(words[2]).toAbsolutePath().normalize();
    out = Path.of(words[3]).toAbsolutePath().normalize();
    version = words[4];
    time = FileTime.from(Instant.parse(words[5]));
  }

  public static void main(String[] words) throws IOException, InterruptedException {
    AssembleApp app = new AssembleApp(words);
    for (Target target : Target.values()) {
      app.assemble(target);
    }
  }

  private void assemble(Target target) throws IOException, InterruptedException {
    String name = "shinline-" + version + "-" + target.word;
    Path folder = out.resolve(name);
    delete(folder);
    Path lib = Files.createDirectories(folder.resolve("lib"));
    Files.copy(out.resolve("shinline.jar"), lib.resolve("shinline.jar"));
    Set<String> needed = needed();
    for (Path jar : jars(libraries)) {
      String file = jar.getFileName().toString();
      if (needed.contains(file) && !Target.ofAnySystem(file)) {
        copyJar(jar, lib, target);
      }
    }
    for (Path jar : jars(others)) {
      String file = jar.getFileName().toString();
      if (file.endsWith("-" + target.ofBytedeco + ".jar")
          && needed.contains(file.replace("-" + target.ofBytedeco, ""))) {
        copyJar(jar, lib, target);
      }
    }
    boolean windows = target == Target.WINDOWS_X64;
    Path starter = project.resolve("ui-cli/src/app").resolve(windows ? "shinline.cmd" : "shinline");
    copyStarter(starter, folder, windows);
    Path docs = Files.createDirectories(folder.resolve("docs"));
    for (String page : PAGES) {
      Files.copy(project.resolve("docs").resolve(page), docs.resolve(page));
    }
    copyTree(project.resolve("docs/licences"), docs.resolve("licences"));
    Path samples = Files.createDirectories(folder.resolve("sample-clips"));
    for (String file : List.of(SAMPLE, "SOURCE.md")) {
      Files.copy(project.resolve("sample-clips").resolve(file), samples.resolve(file));
    }
    if (target.isThisSystem()) {
      makeRuntime(lib, folder.resolve("runtime"));
    }
    Path zip = zip(folder, out.resolve(name + ".zip"));
    System.out.printf(
        Locale.ROOT,
        "%-32s folder %4d MB, zip %4d MB, %s%n",
        name,
        bytes(folder) / MEGABYTE,
        Files.size(zip) / MEGABYTE,
        target.isThisSystem() ? "with its own Java" : "needs Java 17 or newer");
  }

  /** Line ends are those of the system, however the build's own checkout has them. */
  private static void copyStarter(Path from, Path folder, boolean windows) throws IOException {
    String text = Files.readString(from).replace("\r\n", "\n");
    Path to = folder.resolve(from.getFileName());
    Files.writeString(to, windows ? text.replace("\n", "\r\n") : text);
    to.toFile().setExecutable(true, false);
  }

  // --- libraries ------------------------------------------------------------------------------

  /** What the program's own jar names; an older build may have left more beside it. */
  private Set<String> needed() throws IOException {
    try (JarFile jar = new JarFile(out.resolve("shinline.jar").toFile())) {
      String path = jar.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
      return Stream.of(path.split(" ")).map(AssembleApp::fileName).collect(Collectors.toSet());
    }
  }

  /** Copies a jar without what this system does not load. */
  private void copyJar(Path jar, Path lib, Target target) throws IOException {
    String name = jar.getFileName().toString();
    Predicate<String> wanted = wanted(name, target);
    Set<String> kept = new HashSet<>();
    Set<String> left = new HashSet<>();
    Set<String> named = new HashSet<>();
    try (ZipFile from = new ZipFile(jar.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(lib.resolve(name)))) {
      for (ZipEntry entry : from.stream().toList()) {
        if (entry.isDirectory()) {
          continue;
        }
        if (!wanted.test(entry.getName())) {
          left.add(fileName(entry.getName()));
          continue;
        }
        kept.add(fileName(entry.getName()));
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setTime(entry.getTime());
        to.putNextEntry(copy);
        try (InputStream in = from.getInputStream(entry)) {
          byte[] bytes = in.readAllBytes();
          to.write(bytes);
          if (NATIVE.matcher(fileName(entry.getName())).matches()) {
            named.addAll(librariesNamedIn(bytes));
          }
        }
      }
    }
    named.retainAll(left);
    named.removeAll(kept);
    if (!named.isEmpty()) {
      throw new IOException(name + " would miss " + named + ", which its other libraries link");
    }
  }

  private static Predicate<String> wanted(String jar, Target target) {
    if (jar.endsWith("-" + target.ofBytedeco + ".jar")) {
      return entry -> {
        if (!entry.startsWith("org/bytedeco/")) {
          return true;
        }
        String file = fileName(entry);
        return !entry.contains("/python/")
            && NATIVE.matcher(file).matches()
            && (LOADED.matcher(file).matches()
                || target.word.startsWith("macos") && LOADED_ON_MACOS.matcher(file).matches());
      };
    }
    if (jar.startsWith("onnxruntime-") && !jar.startsWith("onnxruntime-engine")) {
      String own = "ai/onnxruntime/native/" + target.ofOnnxRuntime + "/";
      return entry ->
          !entry.startsWith("ai/onnxruntime/native/")
              || entry.startsWith(own) && NATIVE.matcher(entry).matches() && !entry.contains(".dSYM/");
    }
    if (jar.startsWith("jna-")) {
      String own = "com/sun/jna/" + target.ofJna + "/";
      return entry ->
          !entry.matches("com/sun/jna/[^/]+/(lib)?jnidispatch\\..*") || entry.startsWith(own);
    }
    return entry -> true;
  }

  /** Every word in a native file that is the name of a library: what it links is among them. */
  private static Set<String> librariesNamedIn(byte[] bytes) {
    Set<String> names = new HashSet<>();
    ByteArrayOutputStream word = new ByteArrayOutputStream();
    for (byte b : bytes) {
      if (Character.isLetterOrDigit((char) b) && b > 0 || b == '.' || b == '_' || b == '-') {
        word.write(b);
      } else {
        if (word.size() > "a.so".length()) {
          String name = word.toString(StandardCharsets.US_ASCII);
          if (NATIVE.matcher(name).matches()) {
            names.add(name);
          }
        }
        word.reset();
      }
    }
    return names;
  }

  // --- Java -----------------------------------------------------------------------------------

  /** The modules the program uses, as jdeps tells them, and nothing to develop with. */
  private static void makeRuntime(Path lib, Path runtime) throws IOException, InterruptedException {
    Path jdk = Path.of(System.getProperty("java.home"));
    List<String> jdeps =
        new ArrayList<>(
            List.of(
                tool(jdk, "jdeps"),
                "--print-module-deps",
                "--ignore-missing-deps",
                "--multi-release",
                "17",
                "--recursive",
                "--class-path",
                lib + "/*",
                lib.resolve("shinline.jar").toString()));
    String modules = run(jdeps).strip();
    run(
        List.of(
            tool(jdk, "jlink"),
            "--add-modules",
            modules,
            "--strip-debug",
            "--no-man-pages",
            "--no-header-files",
            "--compress=2",
            // Nothing is shown in a window or played.
            "--exclude-files=**/libawt_xawt.*,**/libsplashscreen.*,**/libjsound.*,**/libjawt.*",
            "--output",
            runtime.toString()));
    if (Target.LINUX_X64.isThisSystem()) {
      bringOwnLibraries(runtime);
    }
    // Starts in half the time; made with the collector it is used with.
    run(List.of(tool(runtime, "java"), "-XX:+UseSerialGC", "-Xshare:dump"));
    System.out.println("Java's modules: " + modules);
  }

  /**
   * A Linux distribution's own JDK leaves parts to the system that another distribution has under
   * another name, for JPEG above all. They go along where they stand alone; older copies of what
   * the system's own libraries share would do harm.
   */
  private static void bringOwnLibraries(Path runtime) throws IOException, InterruptedException {
    Set<Path> outside = new TreeSet<>();
    for (Path library : list(runtime.resolve("lib"), p -> p.toString().endsWith(".so"))) {
      outside.addAll(linkedOutside(library, runtime));
    }
    Set<Path> ofOthers = new HashSet<>();
    for (Path library : outside) {
      ofOthers.addAll(linkedOutside(library, runtime));
    }
    for (Path library : outside) {
      if (!ofOthers.contains(library) && linkedOutside(library, runtime).isEmpty()) {
        Files.copy(library.toRealPath(), runtime.resolve("lib").resolve(library.getFileName()));
        copyLicence(library, runtime.resolve("legal"));
      }
    }
  }

  private static Set<Path> linkedOutside(Path library, Path runtime)
      throws IOException, InterruptedException {
    Set<Path> outside = new TreeSet<>();
    Matcher line =
        Pattern.compile("(\\S+) => (/\\S+)").matcher(run(List.of("ldd", library.toString())));
    while (line.find()) {
      Path path = Path.of(line.group(2)).normalize();
      if (!path.startsWith(runtime) && !EVERYWHERE.matcher(line.group(1)).matches()) {
        outside.add(path);
      }
    }
    return outside;
  }

  private static void copyLicence(Path library, Path legal)
      throws IOException, InterruptedException {
    String owner;
    try {
      owner = run(List.of("dpkg-query", "--search", library.toRealPath().toString()));
    } catch (IOException noPackages) {
      System.out.println("The licence of " + library + " must be put into the zip by hand.");
      return;
    }
    String name = owner.substring(0, owner.indexOf(':'));
    Path to = Files.createDirectories(legal.resolve(name));
    Files.copy(Path.of("/usr/share/doc", name, "copyright"), to.resolve("copyright"));
  }

  private static String tool(Path java, String name) {
    return java.resolve("bin").resolve(name).toString();
  }

  private static String run(List<String> command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IOException(String.join(" ", command) + ": " + said);
    }
    return said;
  }

  // --- files ----------------------------------------------------------------------------------

  private static String fileName(String entry) {
    return entry.substring(entry.lastIndexOf('/') + 1);
  }

  private static List<Path> jars(Path folder) throws IOException {
    return list(folder, p -> p.toString().endsWith(".jar"));
  }

  private static List<Path> list(Path folder, Predicate<Path> wanted) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(wanted).sorted().toList();
    }
  }

  private static List<Path> walk(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.sorted().toList();
    }
  }

  private static void copyTree(Path from, Path to) throws IOException {
    for (Path file : walk(from)) {
      Files.copy(
          file,
          to.resolve(from.relativize(file).toString()),
          StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    for (Path file : walk(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
      // What jlink makes may not be written to, and on some systems not be deleted then.
      file.toFile().setWritable(true);
      Files.delete(file);
    }
  }

  private static long bytes(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).mapToLong(AssembleApp::size).sum();
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** With the right to run what is to be run, and the same time on every file. */
  private Path zip(Path folder, Path zip) throws IOException {
    Files.deleteIfExists(zip);
    Map<String, String> how = Map.of("create", "true", "enablePosixFileAttributes", "true");
    try (FileSystem archive = FileSystems.newFileSystem(zip, how)) {
      for (Path file : walk(folder)) {
        Path to = archive.getPath("/", folder.getParent().relativize(file).toString().replace('\\', '/'));
        Files.copy(file, to);
        boolean runs = Files.isDirectory(file) || file.toFile().canExecute();
        Files.setAttribute(
            to, "zip:permissions", PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--"));
        Files.setLastModifiedTime(to, time);
      }
    }
    return zip;
  }
}
