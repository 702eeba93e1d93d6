using ProcedureRules.Quantities;

namespace ProcedureRules.Facts;

/// <summary>Which unit was meant where a value lies outside what occurs.</summary>
/// <param name="Value">The value as it would have to be stated.</param>
/// <param name="Meant">The figure as it was meant, where that says more than the value.</param>
internal sealed record UnitGuess(string Value, string? Meant = null)
{
    private static readonly double SeaLevel = Quantity.Of(1, "atm").Low;

    /// <summary>The same figure in the unit in which it fits best, or null if it fits in none.</summary>
    public static UnitGuess? For(string text, Quantity range)
    {
        var units = UnitTable.For(range.Dimension).ToList();
        var written = units.SelectMany(unit => unit.Names).Where(name => EndsWithUnit(text, name)).MaxBy(name => name.Length);
        if (written is null)
            return null;
        var figure = text[..^written.Length];
        if (Nearest(Counterparts(units.First(unit => unit.Names.Contains(written))), range, AtSeaLevel) is { } meant)
            return new UnitGuess(meant.Value.ToDisplay(UnitSystem.Us), meant.Text);
        return Nearest(units, range, value => value) is { } same ? new UnitGuess(same.Text) : null;

        (string Text, Quantity Value)? Nearest(IEnumerable<Unit> among, Quantity within, Func<Quantity, Quantity> convert) => among
            .Select(unit => figure + unit.Symbol)
            .Select(guess => Quantity.TryRead(guess, out var value, out _) ? (Text: guess, Value: convert(value)) : ((string Text, Quantity Value)?)null)
            .Where(guess => guess is { } read && read.Value.Dimension == within.Dimension && within.Contains(read.Value))
            .MinBy(guess => Math.Abs((guess!.Value.Value.Midpoint - within.Midpoint) ?? double.MaxValue));
    }

    // A gauge counts from the air around, a vacuum gauge in microns from empty space: the figure of one is easily written as the other's.
    private static IEnumerable<Unit> Counterparts(Unit unit) => Other(unit.Dimension) is { } other
        ? UnitTable.For(other).Where(one => Math.Abs(one.Factor) == Math.Abs(unit.Factor))
        : [];

    private static Dimension? Other(Dimension dimension) => dimension switch
    {
        Dimension.GaugePressure => Dimension.AbsolutePressure,
        Dimension.AbsolutePressure => Dimension.GaugePressure,
        _ => null,
    };

    private static Quantity AtSeaLevel(Quantity value)
    {
        var shift = value.Dimension == Dimension.GaugePressure ? SeaLevel : -SeaLevel;
        return Quantity.Between(value.Low + shift, value.High + shift, Other(value.Dimension)!.Value);
    }

    private static bool EndsWithUnit(string text, string name) =>
        text.EndsWith(name, StringComparison.Ordinal) && text.Length > name.Length && !char.IsLetter(text[^(name.Length + 1)]);
}
