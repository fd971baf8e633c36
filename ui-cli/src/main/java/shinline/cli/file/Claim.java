package shinline.cli.file;

/** By what right a file is written over. */
public enum Claim {
  /** The coach named this very file as an output. */
  NAMED,

  /** Nobody named it: only what this program wrote, and nobody changed since, is replaced. */
  OURS
}
