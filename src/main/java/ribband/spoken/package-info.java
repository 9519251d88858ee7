/**
 * What a builder says of a night in one breath. Enters: a line as it was typed or dictated, the
 * project, its phases. Leaves: {@link ribband.spoken.Spoken} - hours, money and pieces, and every
 * word that was not understood. Text becomes words ({@link ribband.spoken.Lexeme}), words between
 * commas become parts, and a part is one of three things or stays text. Start at {@link
 * ribband.spoken.SpokenLine}.
 */
package ribband.spoken;
