package fineweight.calc;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;

/** Where the office asks for the add-in; the jar's manifest names this class. */
public final class AddInRegistration {
  private AddInRegistration() {}

  /**
   * The factory of the implementation; null if the name is not its name. The office calls this
   * method by its name.
   */
  public static XSingleComponentFactory __getComponentFactory(String implementation) {
    return implementation.equals(CalcAddIn.class.getName())
        ? Factory.createComponentFactory(CalcAddIn.class, new String[] {CalcAddIn.SERVICE})
        : null;
  }
}
