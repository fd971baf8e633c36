package shinline.cli.words;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds string literals that read like words to a person: two words with a blank between them, or
 * one word beside a value that is joined to it. What a person never reads is left out by its kind,
 * not by its text.
 */
final class SentenceScan extends TreeScanner<Void, Void> {
  /** Stands for a value in a text put together with {@code +}. */
  private static final String VALUE = "\u25a1";

  private static final String WORD = "(\\p{L}[\\p{L}'’]+)";
  private static final String GAP = "[,;:.!?)\"]*\\s+[(\"'·–]*\\s*";

  /** Two words, or a word and a value on either side of a blank. */
  private static final Pattern WORDS =
      Pattern.compile(WORD + GAP + "(" + WORD + "|" + VALUE + ")|" + VALUE + GAP + WORD);

  /** Messages of programming errors, which a coach never sees. */
  private static final Set<String> FAULTS =
      Set.of(
          "IllegalArgumentException",
          "IllegalStateException",
          "UncheckedIOException",
          "AssertionError",
          "ArithmeticException",
          "NoSuchElementException");

  /** Methods of {@code Markup} whose arguments are names and values of HTML, and from which on. */
  private static final Set<String> MARKUP = Set.of("open", "empty", "leaf");

  /** Attributes whose values are read, or spoken by a screen reader. */
  private static final Set<String> READ_ATTRIBUTES = Set.of("aria-label", "alt", "title", "label");

  /**
   * @param file name of the source file
   * @param text the literal; joined literals are one, with a box for what is between them
   */
  record Found(String file, String text) {}

  private final String file;
  private final List<Found> found = new ArrayList<>();

  private SentenceScan(String file) {
    this.file = file;
  }

  static List<Found> of(MainSources sources) {
    List<Found> all = new ArrayList<>();
    for (CompilationUnitTree unit : sources.files()) {
      String path = unit.getSourceFile().toUri().getPath();
      SentenceScan scan = new SentenceScan(path.substring(path.lastIndexOf('/') + 1));
      scan.scan(unit, null);
      all.addAll(scan.found);
    }
    return all;
  }

  @Override
  public Void visitAnnotation(AnnotationTree node, Void unused) {
    return name(node.getAnnotationType()).equals("SuppressWarnings")
        ? null
        : super.visitAnnotation(node, unused);
  }

  @Override
  public Void visitNewClass(NewClassTree node, Void unused) {
    return FAULTS.contains(name(node.getIdentifier())) ? null : super.visitNewClass(node, unused);
  }

  @Override
  public Void visitMethodInvocation(MethodInvocationTree node, Void unused) {
    String method = name(node.getMethodSelect());
    if (!MARKUP.contains(method)) {
      return super.visitMethodInvocation(node, unused);
    }
    scan(node.getMethodSelect(), unused);
    List<? extends ExpressionTree> arguments = node.getArguments();
    int attributes = method.equals("leaf") ? 2 : 1;
    for (int i = 0; i < arguments.size(); i++) {
      boolean value = i >= attributes && (i - attributes) % 2 == 1;
      boolean read =
          value
              ? arguments.get(i - 1) instanceof LiteralTree name
                  && READ_ATTRIBUTES.contains(String.valueOf(name.getValue()))
              : i > 0 && i < attributes;
      if (read || !constant(arguments.get(i))) {
        scan(arguments.get(i), unused);
      }
    }
    return null;
  }

  @Override
  public Void visitBinary(BinaryTree node, Void unused) {
    if (!joined(node)) {
      return super.visitBinary(node, unused);
    }
    StringBuilder text = new StringBuilder();
    join(node, text);
    note(text.toString());
    return null;
  }

  @Override
  public Void visitLiteral(LiteralTree node, Void unused) {
    if (node.getValue() instanceof String text) {
      note(text);
    }
    return null;
  }

  private void join(ExpressionTree node, StringBuilder text) {
    if (node instanceof BinaryTree binary && joined(node)) {
      join(binary.getLeftOperand(), text);
      join(binary.getRightOperand(), text);
    } else if (node instanceof LiteralTree literal && literal.getValue() instanceof String part) {
      text.append(part);
    } else {
      text.append(VALUE);
      scan(node, null);
    }
  }

  /** A text written out here, or a choice of such texts. */
  private static boolean constant(Tree node) {
    return node instanceof ConditionalExpressionTree choice
        ? constant(choice.getTrueExpression()) && constant(choice.getFalseExpression())
        : node instanceof LiteralTree || joined(node);
  }

  /** Whether texts are put together here. */
  private static boolean joined(Tree node) {
    if (node instanceof ParenthesizedTree parentheses) {
      return joined(parentheses.getExpression());
    }
    return node instanceof BinaryTree binary
        && binary.getKind() == Tree.Kind.PLUS
        && (text(binary.getLeftOperand()) || text(binary.getRightOperand()));
  }

  private static boolean text(Tree node) {
    return node instanceof LiteralTree literal && literal.getValue() instanceof String
        || joined(node);
  }

  private void note(String text) {
    if (WORDS.matcher(text).find()) {
      found.add(new Found(file, text));
    }
  }

  private static String name(Tree node) {
    if (node instanceof IdentifierTree identifier) {
      return identifier.getName().toString();
    }
    return node instanceof MemberSelectTree select ? select.getIdentifier().toString() : "";
  }
}
