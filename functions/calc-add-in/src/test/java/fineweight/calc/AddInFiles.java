package fineweight.calc;

import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The files that describe the add-in to the office, made from the list of functions. */
final class AddInFiles {
  private AddInFiles() {}

  /** The text that the office reads as its library of types. */
  static String types() {
    StringBuilder idl =
        new StringBuilder(
            "# Made from the list of functions; a test holds them together.\n"
                + "module fineweight { module calc {\n"
                + "interface XFineweight: com::sun::star::uno::XInterface {\n");
    for (SheetFunction function : SheetFunctions.all()) {
      List<String> parameters = new ArrayList<>();
      function.parameters().forEach(each -> parameters.add("[in] any " + identifier(each)));
      idl.append("  any ").append(function.method());
      idl.append("(").append(String.join(", ", parameters)).append(");\n");
    }
    return idl.append("};\n}; };\n").toString();
  }

  /** The name of a parameter as the office's languages write it. */
  static String identifier(Parameter parameter) {
    StringBuilder name = new StringBuilder();
    for (String word : parameter.name().split(" ")) {
      name.append(
          name.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return name.toString();
  }

  /** What the office shows of the functions. */
  static String descriptions() {
    StringBuilder xml =
        new StringBuilder(
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <!-- Made from the list of functions; a test holds them together. -->
            <oor:component-data xmlns:oor="http://openoffice.org/2001/registry"
                                xmlns:xs="http://www.w3.org/2001/XMLSchema"
                                oor:name="CalcAddIns" oor:package="org.openoffice.Office">
            <node oor:name="AddInInfo">
            <node oor:name="Fineweight" oor:op="replace">
            <node oor:name="AddInFunctions">
            """);
    SheetFunctions.all().forEach(function -> describe(xml, function));
    return xml.append("</node>\n</node>\n</node>\n</oor:component-data>\n").toString();
  }

  private static void describe(StringBuilder xml, SheetFunction function) {
    xml.append("<node oor:name=\"").append(function.method()).append("\" oor:op=\"replace\">\n");
    property(xml, "DisplayName", function.name());
    property(
        xml,
        "Description",
        function.texts().purpose() + " Result: " + function.texts().result() + ".");
    xml.append("<prop oor:name=\"Category\"><value>Add-In</value></prop>\n");
    property(xml, "CompatibilityName", function.name());
    xml.append("<node oor:name=\"Parameters\">\n");
    for (Parameter parameter : function.parameters()) {
      xml.append("<node oor:name=\"").append(identifier(parameter));
      xml.append("\" oor:op=\"replace\">\n");
      property(xml, "DisplayName", parameter.name());
      property(xml, "Description", parameter.words());
      xml.append("</node>\n");
    }
    xml.append("</node>\n</node>\n");
  }

  private static void property(StringBuilder xml, String name, String value) {
    xml.append("<prop oor:name=\"").append(name).append("\"><value xml:lang=\"en\">");
    xml.append(value.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
    xml.append("</value></prop>\n");
  }
}
