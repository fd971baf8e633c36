package shinline.vision.clip;

/** The refusals whose kind says it all. */
public enum PlainRefusal implements ClipRefusal {
  /** There is no such file. */
  MISSING,
  /** No such file, and a name that could not be read: it is not in the system's encoding. */
  NAME_NOT_TEXT,
  FOLDER,
  /** A pipe or a device: it cannot be read twice, and may never come to an end. */
  PIPE,
  EMPTY,
  /** The file may not be read by this user. */
  NOT_PERMITTED,
  /** The disk refuses to give the file's bytes. */
  DISK_FAILS,
  /** No film this program knows, or one whose beginning is damaged. */
  UNKNOWN_FORMAT,
  /** A container FFmpeg knows, with neither film nor sound. */
  NO_VIDEO,
  SOUND_ONLY,
  /** A film cut off before its index was written. */
  NO_INDEX,
  /** A film none of whose pictures can be decoded. */
  NO_PICTURE,
  /** The first picture cannot be prepared: no memory, or a picture FFmpeg stumbles over. */
  FIRST_PICTURE_FAILS,
  /** FFmpeg does not run on this computer. */
  NO_LIBRARY,
  /** A capture rate was told, but the file does not say at what rate it plays. */
  NO_PLAYBACK_RATE
}
