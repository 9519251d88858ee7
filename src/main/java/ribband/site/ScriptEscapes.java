package ribband.site;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.util.HexFormat;

/**
 * Escapes in JSON what means more in a script: no word of it ends the script or a line (ECMA-262,
 * 12.3), or says anything to a terminal.
 */
final class ScriptEscapes extends CharacterEscapes {
  private static final long serialVersionUID = 1;
  private static final int LAST_CONTROL = 0x9f;
  private static final HexFormat HEX = HexFormat.of();

  @Override
  public int[] getEscapeCodesForAscii() {
    int[] codes = standardAsciiEscapesForJSON();
    codes['<'] = ESCAPE_STANDARD;
    codes[0x7f] = ESCAPE_STANDARD;
    return codes;
  }

  @Override
  public SerializableString getEscapeSequence(int c) {
    boolean escaped = c > 0x7f && c <= LAST_CONTROL || c == 0x2028 || c == 0x2029;
    return escaped ? new SerializedString("\\u" + HEX.toHexDigits((char) c)) : null;
  }
}
