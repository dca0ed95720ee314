package curvestock.fuzz;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * Job files grown by a fuzzer that watches which branches are taken (Jazzer): see
 * benchmarks/RELIABILITY.md for the command.
 */
public final class GuidedJobs {

  private GuidedJobs() {}

  /** Called by the fuzzer; what is not UTF-8 never gets as far as the reader. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    try {
      Trial.read(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return;
    }
  }
}
