using ProcedureRules.Quantities;

namespace ProcedureRules.Facts;

/// <summary>Guesses which unit was meant where a value lies outside what occurs.</summary>
internal static class UnitGuess
{
    /// <summary>The same figure in the unit in which it fits best, or null if it fits in none.</summary>
    public static string? For(string text, Dimension dimension, Quantity range)
    {
        var units = UnitTable.For(dimension).ToList();
        var written = units.SelectMany(unit => unit.Names).Where(name => EndsWithUnit(text, name)).MaxBy(name => name.Length);
        if (written is null)
            return null;
        var figure = text[..^written.Length];
        return units.Select(unit => figure + unit.Symbol)
            .Where(guess => Quantity.TryRead(guess, dimension, out var quantity, out _) && range.Contains(quantity))
            .MinBy(guess => Math.Abs((Quantity.Read(guess).Midpoint - range.Midpoint) ?? double.MaxValue));
    }

    private static bool EndsWithUnit(string text, string name) =>
        text.EndsWith(name, StringComparison.Ordinal) && text.Length > name.Length && !char.IsLetter(text[^(name.Length + 1)]);
}
