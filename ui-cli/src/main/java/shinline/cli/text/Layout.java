package shinline.cli.text;

/** How text for a person is set: signs, colour, units. */
public record Layout(Typography signs, Paint paint, Units units) {}
