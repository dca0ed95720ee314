package curvestock.printing;

import java.util.stream.Stream;

/** Fonts from outside the program, looked through for letters that the built-in one lacks. */
public interface SpareFonts {

  /** None: what the built-in font lacks is printed as a question mark. */
  SpareFonts NONE = Stream::empty;

  /** TrueType files, those to be preferred first; read as they are taken. */
  Stream<byte[]> files();
}
