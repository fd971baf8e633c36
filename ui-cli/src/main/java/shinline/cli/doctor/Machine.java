package shinline.cli.doctor;

import java.lang.management.ManagementFactory;
import shinline.cli.words.Words;

/**
 * Java, processor and memory.
 *
 * @param javaFeature the number before the first dot of Java's version
 * @param javaVersion all of it
 * @param cores that Java may use
 * @param memoryBytes of the computer, or of the container it runs in
 */
record Machine(int javaFeature, String javaVersion, int cores, long memoryBytes) {
  private static final int LEAST_JAVA = 17;

  /** The program, at its most, holds 600 MB; the system and a browser want their share. */
  private static final long LEAST_MEMORY = 1_500_000_000L;

  private static final long COMFORTABLE_MEMORY = 3_500_000_000L;

  private static final double GIGABYTE = 1e9;

  static Machine here() {
    long memory =
        ManagementFactory.getOperatingSystemMXBean()
                instanceof com.sun.management.OperatingSystemMXBean system
            ? system.getTotalMemorySize()
            : Long.MAX_VALUE;
    return new Machine(
        Runtime.version().feature(),
        Runtime.version().toString(),
        Runtime.getRuntime().availableProcessors(),
        memory);
  }

  Health java() {
    return javaFeature >= LEAST_JAVA
        ? Health.good(Part.JAVA, Words.say("doctor.java", javaVersion))
        : Health.bad(Part.JAVA, Words.say("doctor.java.old", javaVersion, LEAST_JAVA));
  }

  Health processor() {
    return cores > 1
        ? Health.good(Part.PROCESSOR, Words.say("doctor.cores", cores))
        : Health.poor(Part.PROCESSOR, Words.say("doctor.cores.one"));
  }

  Health memory() {
    String gigabytes = Words.say("doctor.memory", memoryBytes / GIGABYTE);
    if (memoryBytes == Long.MAX_VALUE) {
      return Health.poor(Part.MEMORY, Words.say("doctor.memory.unknown"));
    }
    if (memoryBytes < LEAST_MEMORY) {
      return Health.bad(Part.MEMORY, Words.say("doctor.memory.little", gigabytes));
    }
    return memoryBytes < COMFORTABLE_MEMORY
        ? Health.poor(Part.MEMORY, Words.say("doctor.memory.tight", gigabytes))
        : Health.good(Part.MEMORY, gigabytes);
  }
}
