package fineweight.calc;

import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/**
 * The functions as the office calls them. Methods, parameters and their order are those of the list
 * of functions and of types.idl; a test holds the three together. Every argument and every result
 * may be a number, a text or an area.
 */
public interface XFineweight extends XInterface {
  /** How the bridge to the office carries the methods. */
  TypeInfo[] UNOTYPEINFO = {
    new MethodTypeInfo("standard", 0, TypeInfo.ANY),
    new MethodTypeInfo("state", 1, TypeInfo.ANY),
    new MethodTypeInfo("metal", 2, TypeInfo.ANY),
    new MethodTypeInfo("fineness", 3, TypeInfo.ANY),
    new MethodTypeInfo("grossMass", 4, TypeInfo.ANY),
    new MethodTypeInfo("question", 5, TypeInfo.ANY),
    new MethodTypeInfo("citation", 6, TypeInfo.ANY),
    new MethodTypeInfo("fineMass", 7, TypeInfo.ANY),
    new MethodTypeInfo("fineOunces", 8, TypeInfo.ANY),
    new MethodTypeInfo("fineOuncesList", 9, TypeInfo.ANY),
    new MethodTypeInfo("pieces", 10, TypeInfo.ANY),
    new MethodTypeInfo("melt", 11, TypeInfo.ANY),
    new MethodTypeInfo("worth", 12, TypeInfo.ANY),
    new MethodTypeInfo("worthBasis", 13, TypeInfo.ANY),
    new MethodTypeInfo("lotTotal", 14, TypeInfo.ANY),
    new MethodTypeInfo("lotRange", 15, TypeInfo.ANY),
    new MethodTypeInfo("costShares", 16, TypeInfo.ANY),
    new MethodTypeInfo("breakEven", 17, TypeInfo.ANY),
    new MethodTypeInfo("netProceeds", 18, TypeInfo.ANY),
    new MethodTypeInfo("leastPrice", 19, TypeInfo.ANY),
    new MethodTypeInfo("setPlace", 20, TypeInfo.ANY),
    new MethodTypeInfo("setStatus", 21, TypeInfo.ANY),
    new MethodTypeInfo("massCheck", 22, TypeInfo.ANY),
    new MethodTypeInfo("density", 23, TypeInfo.ANY),
    new MethodTypeInfo("conversion", 24, TypeInfo.ANY)
  };

  Object standard(Object coin, Object year, Object mint, Object country, Object typeName);

  Object state(Object coin, Object year, Object mint, Object country, Object typeName);

  Object metal(Object coin, Object year, Object mint, Object country, Object typeName);

  Object fineness(Object coin, Object year, Object mint, Object country, Object typeName);

  Object grossMass(Object coin, Object year, Object mint, Object country, Object typeName);

  Object question(Object coin, Object year, Object mint, Object country, Object typeName);

  Object citation(Object coin, Object year, Object mint, Object country, Object typeName);

  Object fineMass(
      Object coin,
      Object metal,
      Object pieces,
      Object year,
      Object mint,
      Object country,
      Object typeName);

  Object fineOunces(
      Object coin,
      Object metal,
      Object pieces,
      Object year,
      Object mint,
      Object country,
      Object typeName);

  Object fineOuncesList(Object coins, Object metal, Object pieces);

  Object pieces(
      Object pieces, Object coin, Object year, Object mint, Object country, Object typeName);

  Object melt(
      Object coin,
      Object spot,
      Object pieces,
      Object wear,
      Object payout,
      Object year,
      Object mint,
      Object country,
      Object typeName);

  Object worth(
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
      Object typeName);

  Object worthBasis(
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
      Object typeName);

  Object lotTotal(Object coins, Object spot, Object pieces, Object wear, Object payout);

  Object lotRange(Object coins, Object spot, Object pieces, Object wear, Object payout);

  Object costShares(Object cost, Object worths, Object pieces);

  Object breakEven(
      Object cost,
      Object coins,
      Object metal,
      Object pieces,
      Object wear,
      Object payout,
      Object others);

  Object netProceeds(
      Object price,
      Object commission,
      Object fixed,
      Object paymentShare,
      Object paymentFixed,
      Object postageIn,
      Object postageOut);

  Object leastPrice(
      Object cost,
      Object margin,
      Object commission,
      Object fixed,
      Object paymentShare,
      Object paymentFixed,
      Object postageIn,
      Object postageOut);

  Object setPlace(Object coin, Object year, Object mint, Object country, Object typeName);

  Object setStatus(Object coins);

  Object massCheck(
      Object coin,
      Object mass,
      Object tolerance,
      Object year,
      Object mint,
      Object country,
      Object typeName);

  Object density(Object alloy);

  Object conversion(Object amount, Object from, Object to);
}
