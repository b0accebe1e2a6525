package fineweight.window;

import fineweight.metal.Metal;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** A field for the price of each metal, one for further metals, one for the currency. */
final class PriceFields extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Metals and the letters that lead to their fields. */
  private static final Map<Metal, Character> LETTERS =
      Map.of(Metal.GOLD, 'G', Metal.SILVER, 'S', Metal.PLATINUM, 'P', Metal.PALLADIUM, 'L');

  private final transient Map<Metal, JTextField> fields = new EnumMap<>(Metal.class);
  private final JTextField others = new JTextField(22);
  private final JTextField currency = new JTextField(5);
  private final transient Runnable listener;

  /**
   * @param listener is told of every change
   */
  PriceFields(Runnable listener) {
    super(new GridBagLayout());
    this.listener = listener;
    setBorder(BorderFactory.createTitledBorder("Today's prices of one troy ounce"));
    int place = 0;
    for (Metal metal : List.of(Metal.GOLD, Metal.SILVER, Metal.PLATINUM, Metal.PALLADIUM)) {
      JTextField field = new JTextField(8);
      fields.put(metal, field);
      String name = Character.toUpperCase(metal.word().charAt(0)) + metal.word().substring(1);
      field.setToolTipText(
          "Such as 30.25; with a unit where it is not the troy ounce: 970/kg or 0.97/g");
      add(place++, name, LETTERS.get(metal), field, "Price of " + metal.word());
    }
    currency.setToolTipText("Three letters such as USD; empty: that of the workbook, else USD");
    others.setToolTipText("Base metals count where they are priced: Cu=9500/t Ni=15000/t");
    add(0, 1, 1, "Currency", 'Y', currency, "Currency of the prices");
    add(1, 1, 3, "Other metals", 'O', others, "Prices of other metals, such as Cu=9500/t");
  }

  private void add(int place, String name, char letter, JTextField field, String meaning) {
    add(place, 0, 1, name, letter, field, meaning);
  }

  private void add(
      int place, int row, int wide, String name, char letter, JTextField field, String meaning) {
    JLabel label = new JLabel(name);
    label.setDisplayedMnemonic(letter);
    label.setLabelFor(field);
    field.getAccessibleContext().setAccessibleName(meaning);
    field.setName(name);
    field.getDocument().addDocumentListener(new Listening());
    GridBagConstraints at = new GridBagConstraints();
    at.gridy = row;
    at.gridx = place * 2;
    at.anchor = GridBagConstraints.LINE_START;
    at.insets.set(4, 8, 4, 4);
    add((JComponent) label, at);
    at.gridx++;
    at.gridwidth = wide * 2 - 1;
    at.fill = GridBagConstraints.HORIZONTAL;
    at.weightx = 1;
    add((JComponent) field, at);
  }

  /** What was typed, by metal. */
  Map<Metal, String> prices() {
    Map<Metal, String> typed = new EnumMap<>(Metal.class);
    fields.forEach((metal, field) -> typed.put(metal, field.getText()));
    return typed;
  }

  String others() {
    return others.getText();
  }

  String currency() {
    return currency.getText();
  }

  @Override
  public void setEnabled(boolean enabled) {
    super.setEnabled(enabled);
    for (java.awt.Component each : getComponents()) {
      each.setEnabled(enabled);
    }
  }

  private final class Listening implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent typed) {
      listener.run();
    }

    @Override
    public void removeUpdate(DocumentEvent typed) {
      listener.run();
    }

    @Override
    public void changedUpdate(DocumentEvent typed) {
      listener.run();
    }
  }
}
