package shinline.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contexts are those of OWASP's Cross Site Scripting Prevention Cheat Sheet. */
class MarkupTest {
  private static final String HOSTILE = "</p><script>alert('x')</script>\"&\u0000\ud800";

  @Test
  void aTextAndAnAttributeAreEscaped() {
    String harmless =
        "&lt;/p&gt;&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&quot;&amp;\ufffd\ufffd";
    assertThat(new Markup().leaf("p", HOSTILE, "title", HOSTILE).done())
        .isEqualTo("<p title=\"" + harmless + "\">" + harmless + "</p>");
  }

  @Test
  void aCharacterOfTwoHalvesIsKept() {
    assertThat(new Markup().text("a\ud83c\udfcb").done()).isEqualTo("a\ud83c\udfcb");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "javascript:alert(1)",
        " javascript:alert(1)",
        "clips/javascript:alert(1)",
        "//elsewhere.example/x",
        "\\\\elsewhere.example",
        "/etc",
        "https://elsewhere.example",
        "data:text/html,x",
        "#x\"y",
        ""
      })
  void anAddressLeadsNowhereElse(String address) {
    Markup page = new Markup();
    assertThatThrownBy(() -> page.leaf("a", "x", "href", address))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("href");
    assertThatThrownBy(() -> page.empty("img", "src", address))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"#rep-2", "clips/squat%20%231.html", "Übung.html"})
  void anAddressLeadsIntoThePageAndBesideIt(String address) {
    assertThat(new Markup().leaf("a", "x", "href", address).done())
        .isEqualTo("<a href=\"" + address + "\">x</a>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"onclick", "onerror", "style", "srcdoc", "srcset"})
  void whatABrowserWouldRunTakesNoText(String attribute) {
    assertThatThrownBy(() -> new Markup().open("div", attribute, "x"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(attribute);
  }

  @Test
  void aScriptThatWouldEndEarlyIsRefused() {
    assertThatThrownBy(() -> new Markup().shipped("script", "'</script>'"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new Markup().shipped("script", "a < b && c").done())
        .isEqualTo("<script>a < b && c</script>");
  }

  @Test
  void aPictureIsPartOfThePage() {
    assertThat(new Markup().picture(new byte[] {1, 2, 3}, "a \"b\"", "class", "best").done())
        .isEqualTo(
            "<img class=\"best\" src=\"data:image/jpeg;base64,AQID\" alt=\"a &quot;b&quot;\">");
  }

  @Test
  void anElementLeftOpenIsAFault() {
    assertThatThrownBy(() -> new Markup().open("main").done())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("main");
  }
}
