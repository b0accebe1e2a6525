package fineweight.calc;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.XComponentContext;
import fineweight.sheet.SheetFunctions;

/** The functions, made by the office when a cell first calls one. */
public final class CalcAddIn extends WeakBase implements XFineweight, XServiceInfo {
  /** The first part of the functions' names, as the office puts it together. */
  static final String SERVICE = "Fineweight";

  /** The office needs a constructor that takes its context. */
  public CalcAddIn(XComponentContext context) {}

  @Override
  public String getImplementationName() {
    return CalcAddIn.class.getName();
  }

  @Override
  public boolean supportsService(String service) {
    return service.equals(SERVICE);
  }

  @Override
  public String[] getSupportedServiceNames() {
    return new String[] {SERVICE};
  }

  private static Object call(String method, Object... arguments) {
    return UnoOutcomes.value(SheetFunctions.ofMethod(method).evaluate(UnoArguments.of(arguments)));
  }

  @Override
  public Object standard(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("standard", coin, year, mint, country, typeName);
  }

  @Override
  public Object state(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("state", coin, year, mint, country, typeName);
  }

  @Override
  public Object metal(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("metal", coin, year, mint, country, typeName);
  }

  @Override
  public Object fineness(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("fineness", coin, year, mint, country, typeName);
  }

  @Override
  public Object grossMass(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("grossMass", coin, year, mint, country, typeName);
  }

  @Override
  public Object question(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("question", coin, year, mint, country, typeName);
  }

  @Override
  public Object citation(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("citation", coin, year, mint, country, typeName);
  }

  @Override
  public Object fineMass(
      Object coin,
      Object metal,
      Object pieces,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call("fineMass", coin, metal, pieces, year, mint, country, typeName);
  }

  @Override
  public Object fineOunces(
      Object coin,
      Object metal,
      Object pieces,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call("fineOunces", coin, metal, pieces, year, mint, country, typeName);
  }

  @Override
  public Object fineOuncesList(Object coins, Object metal, Object pieces) {
    return call("fineOuncesList", coins, metal, pieces);
  }

  @Override
  public Object pieces(
      Object pieces, Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("pieces", pieces, coin, year, mint, country, typeName);
  }

  @Override
  public Object melt(
      Object coin,
      Object spot,
      Object pieces,
      Object wear,
      Object payout,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call("melt", coin, spot, pieces, wear, payout, year, mint, country, typeName);
  }

  @Override
  public Object worth(
      Object coin,
      Object spot,
      Object pieces,
      Object wear,
      Object payout,
      Object face,
      Object ownPrice,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call(
        "worth", coin, spot, pieces, wear, payout, face, ownPrice, year, mint, country, typeName);
  }

  @Override
  public Object worthBasis(
      Object coin,
      Object spot,
      Object pieces,
      Object wear,
      Object payout,
      Object face,
      Object ownPrice,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call(
        "worthBasis",
        coin,
        spot,
        pieces,
        wear,
        payout,
        face,
        ownPrice,
        year,
        mint,
        country,
        typeName);
  }

  @Override
  public Object lotTotal(Object coins, Object spot, Object pieces, Object wear, Object payout) {
    return call("lotTotal", coins, spot, pieces, wear, payout);
  }

  @Override
  public Object lotRange(Object coins, Object spot, Object pieces, Object wear, Object payout) {
    return call("lotRange", coins, spot, pieces, wear, payout);
  }

  @Override
  public Object costShares(Object cost, Object worths, Object pieces) {
    return call("costShares", cost, worths, pieces);
  }

  @Override
  public Object breakEven(
      Object cost,
      Object coins,
      Object metal,
      Object pieces,
      Object wear,
      Object payout,
      Object others) {
    return call("breakEven", cost, coins, metal, pieces, wear, payout, others);
  }

  @Override
  public Object netProceeds(
      Object price,
      Object commission,
      Object fixed,
      Object paymentShare,
      Object paymentFixed,
      Object postageIn,
      Object postageOut) {
    return call(
        "netProceeds", price, commission, fixed, paymentShare, paymentFixed, postageIn, postageOut);
  }

  @Override
  public Object leastPrice(
      Object cost,
      Object margin,
      Object commission,
      Object fixed,
      Object paymentShare,
      Object paymentFixed,
      Object postageIn,
      Object postageOut) {
    return call(
        "leastPrice",
        cost,
        margin,
        commission,
        fixed,
        paymentShare,
        paymentFixed,
        postageIn,
        postageOut);
  }

  @Override
  public Object setPlace(Object coin, Object year, Object mint, Object country, Object typeName) {
    return call("setPlace", coin, year, mint, country, typeName);
  }

  @Override
  public Object setStatus(Object coins) {
    return call("setStatus", coins);
  }

  @Override
  public Object massCheck(
      Object coin,
      Object mass,
      Object tolerance,
      Object year,
      Object mint,
      Object country,
      Object typeName) {
    return call("massCheck", coin, mass, tolerance, year, mint, country, typeName);
  }

  @Override
  public Object density(Object alloy) {
    return call("density", alloy);
  }

  @Override
  public Object conversion(Object amount, Object from, Object to) {
    return call("conversion", amount, from, to);
  }
}
