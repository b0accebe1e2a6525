package fineweight.giveaway;

import java.util.Arrays;
import org.apache.xmlbeans.SchemaType;

/** Types of the schema whose values cannot carry a text of somebody's. */
final class Closed {
  /** A colour, a set of bits or a code of a language; a longer one could be anything. */
  private static final int LONGEST_HEX = 20;

  private Closed() {}

  /** Whether the type is closed and the value is one of its values. */
  static boolean holds(SchemaType type, String value) {
    if (type == null) {
      return false;
    }
    if (!type.isSimpleType()) {
      return type.getContentType() == SchemaType.SIMPLE_CONTENT
          && holds(type.getContentBasedOnType(), value);
    }
    return isClosed(type, value);
  }

  private static boolean isClosed(SchemaType type, String value) {
    switch (type.getSimpleVariety()) {
      case SchemaType.LIST:
        for (String item : value.strip().split("\\s+")) {
          if (!holds(type.getListItemType(), item)) {
            return false;
          }
        }
        return true;
      case SchemaType.UNION:
        for (SchemaType member : type.getUnionMemberTypes()) {
          if (holds(member, value)) {
            return true;
          }
        }
        return false;
      case SchemaType.ATOMIC:
        return isClosedAtom(type, value);
      default:
        return false;
    }
  }

  private static boolean isClosedAtom(SchemaType type, String value) {
    return switch (type.getPrimitiveType().getBuiltinTypeCode()) {
      case SchemaType.BTC_BOOLEAN -> value.matches("true|false|0|1");
      case SchemaType.BTC_DECIMAL, SchemaType.BTC_FLOAT, SchemaType.BTC_DOUBLE ->
          value.matches("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?");
      case SchemaType.BTC_HEX_BINARY ->
          value.length() <= LONGEST_HEX && value.matches("([0-9A-Fa-f]{2})+");
      case SchemaType.BTC_STRING -> isListed(type, value) || value.matches("-?[0-9]+(\\.[0-9]+)?%");
      default -> false;
    };
  }

  private static boolean isListed(SchemaType type, String value) {
    return type.getEnumerationValues() != null
        && Arrays.stream(type.getEnumerationValues())
            .anyMatch(each -> each.getStringValue().equals(value));
  }
}
