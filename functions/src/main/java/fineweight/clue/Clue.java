package fineweight.clue;

/**
 * Something that the words say. Immutable.
 *
 * @param value what they say
 * @param words the words it came from, as written
 * @param from the field they stand in
 */
public record Clue<T>(T value, String words, FieldRole from) {}
