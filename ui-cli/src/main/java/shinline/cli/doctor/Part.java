package shinline.cli.doctor;

/** What of the computer is looked at. */
public enum Part {
  JAVA,
  PROCESSOR,
  MEMORY,
  TEMPORARY_FOLDER,
  CACHE,
  LIBRARIES,
  MODEL,
  PICTURES,
  RECORD,
  TERMINAL,
  SPEED
}
