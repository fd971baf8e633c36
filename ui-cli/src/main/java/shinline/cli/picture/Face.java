package shinline.cli.picture;

/** Whether the athlete may be recognised in pictures. */
public enum Face {
  SHOWN,
  BLURRED
}
