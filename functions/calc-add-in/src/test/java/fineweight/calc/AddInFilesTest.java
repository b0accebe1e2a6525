package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.Any;
import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.SheetFunction;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The interface, the types and the descriptions are those of the list. */
class AddInFilesTest {
  /** Words that the office's language of types keeps for itself and our names might meet. */
  private static final Set<String> KEPT =
      Set.of(
          ("any type in out inout string char byte short long hyper float double boolean void"
                  + " unsigned sequence module interface service singleton struct enum exception"
                  + " constants const typedef property attribute bound constrained optional"
                  + " readonly removable transient get set raises published")
              .split(" "));

  private static final Path PACKED = Path.of("src", "main", "oxt");

  /** After a change: run with {@code -Dfineweight.write.docs=true} once, and read the files. */
  @Test
  void typesAndDescriptionsAreThoseOfTheList() throws IOException {
    if (Boolean.getBoolean("fineweight.write.docs")) {
      Files.writeString(PACKED.resolve("types.idl"), AddInFiles.types());
      Files.writeString(PACKED.resolve("CalcAddIns.xcu"), AddInFiles.descriptions());
    }
    assertThat(PACKED.resolve("types.idl")).content().isEqualTo(AddInFiles.types());
    assertThat(PACKED.resolve("CalcAddIns.xcu")).content().isEqualTo(AddInFiles.descriptions());
  }

  @Test
  void theInterfaceHasTheFunctionsOfTheListWithAsManyArguments() {
    for (SheetFunction function : SheetFunctions.all()) {
      List<Method> methods =
          Arrays.stream(XFineweight.class.getDeclaredMethods())
              .filter(method -> method.getName().equals(function.method()))
              .toList();
      assertThat(methods).as(function.name()).hasSize(1);
      assertThat(methods.get(0).getReturnType()).isEqualTo(Object.class);
      assertThat(methods.get(0).getParameterTypes())
          .as(function.name())
          .hasSize(function.parameters().size())
          .containsOnly(Object.class);
    }
    assertThat(XFineweight.class.getDeclaredMethods()).hasSameSizeAs(SheetFunctions.all());
  }

  @Test
  void theBridgeKnowsEveryMethodInTheOrderOfTheTypes() {
    TypeInfo[] known = XFineweight.UNOTYPEINFO;
    List<SheetFunction> functions = SheetFunctions.all();
    assertThat(known).hasSameSizeAs(functions);
    for (int i = 0; i < known.length; i++) {
      MethodTypeInfo method = (MethodTypeInfo) known[i];
      assertThat(method.getName()).isEqualTo(functions.get(i).method());
      assertThat(method.getIndex()).isEqualTo(i);
    }
  }

  /** Each method calls the function of its own name, with its arguments in their order. */
  @Test
  void everyMethodPassesItsArgumentsOnInTheirOrder() throws ReflectiveOperationException {
    CalcAddIn addIn = new CalcAddIn(null);
    for (SheetFunction function : SheetFunctions.all()) {
      Method method =
          Arrays.stream(XFineweight.class.getDeclaredMethods())
              .filter(each -> each.getName().equals(function.method()))
              .findFirst()
              .orElseThrow();
      for (int at = 0; at < function.parameters().size(); at++) {
        Object[] arguments = new Object[function.parameters().size()];
        Arrays.fill(arguments, Any.VOID);
        arguments[at] = "what \"is\" this " + at;
        Object expected = UnoOutcomes.value(function.evaluate(UnoArguments.of(arguments.clone())));
        assertThat(method.invoke(addIn, arguments)).as(function.name()).isEqualTo(expected);
      }
    }
  }

  @Test
  void noParameterHasANameThatTheTypesCannotHold() {
    for (SheetFunction function : SheetFunctions.all()) {
      assertThat(function.parameters().stream().map(AddInFiles::identifier).toList())
          .as(function.name())
          .doesNotContainAnyElementsOf(KEPT)
          .allMatch(name -> name.matches("[a-z][a-zA-Z]*"));
    }
  }

  @Test
  void theOfficeFindsTheAddInByItsServiceOnly() {
    assertThat(AddInRegistration.__getComponentFactory(CalcAddIn.class.getName())).isNotNull();
    assertThat(AddInRegistration.__getComponentFactory("another")).isNull();
    CalcAddIn addIn = new CalcAddIn(null);
    assertThat(addIn.getSupportedServiceNames()).containsExactly("Fineweight");
    assertThat(addIn.supportsService("Fineweight")).isTrue();
    assertThat(addIn.supportsService("com.sun.star.sheet.AddIn")).isFalse();
  }
}
