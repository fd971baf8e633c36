package shinline.cli.record;

/** Where the sets of a record come from: every page made of an invented one says so. */
public enum Origin {
  TRAINING,
  INVENTED
}
