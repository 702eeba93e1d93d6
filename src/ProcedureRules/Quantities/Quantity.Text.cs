using System.Diagnostics.CodeAnalysis;

namespace ProcedureRules.Quantities;

// How quantities are written. A figure is decimal (1.25), a fraction without spaces round its stroke (3/8), or both (1 1/4);
// a range is 0.020..0.025 in (two dots or an en dash), a tolerance 2 in +/- 0.5 in (or the plus-minus sign, or a percentage); units of one family
// may follow each other (2 lb 14 oz); "about" stands for AboutShare either way; dT and dP stand before a difference.
public readonly partial record struct Quantity
{
    /// <summary>What "about" allows on either side of a figure, as a share of it.</summary>
    /// <remarks>Common practice, no source: a figure quoted with "about" is good to a fifth or so.</remarks>
    public const decimal AboutShare = 0.2m;

    /// <summary>Reads a whole text as one quantity. A number without a unit is a pure number.</summary>
    /// <returns>Whether it is one; if not, <paramref name="fault"/> says why and where. Nothing is ever thrown.</returns>
    public static bool TryRead(ReadOnlySpan<char> text, out Quantity value, [NotNullWhen(false)] out QuantityFault? fault) =>
        new QuantityReader(text, wholeText: true).TryRead(out value, out _, out fault);

    /// <summary>Reads a whole text where a quantity of a certain dimension is due.</summary>
    /// <returns>Whether it is one of that dimension; a number without a unit is not, unless a number or a count is due.</returns>
    public static bool TryRead(
        ReadOnlySpan<char> text,
        Dimension due,
        out Quantity value,
        [NotNullWhen(false)] out QuantityFault? fault)
    {
        if (!TryRead(text, out value, out fault)) return false;
        if (DimensionRules.Accepts(due, value.Dimension))
        {
            value = value.As(due);
            return true;
        }

        fault = QuantityFaults.Wrong(due, value.Dimension, text);
        value = default;
        return false;
    }

    /// <summary>Reads the longest quantity at the start of a text, for an expression that goes on after it.</summary>
    /// <remarks>
    /// <para>
    /// A minus belongs to the quantity when it comes first, so that <c>-5..10 psi</c> is what it looks like; a minus or plus after
    /// it is left to the expression, as is a stroke with spaces round it (<c>3 / 8 in</c> is a division, <c>3/8 in</c> a figure).
    /// A word after a number that is no unit is left too (<see cref="UnitTable.Nearest"/> helps to say what was meant), unless
    /// it touches the number: <c>45pis</c> is a fault.
    /// </para>
    /// </remarks>
    /// <returns>Whether there is one; <paramref name="consumed"/> is its length without blanks after it.</returns>
    public static bool TryReadPrefix(
        ReadOnlySpan<char> text,
        out Quantity value,
        out int consumed,
        [NotNullWhen(false)] out QuantityFault? fault) =>
        new QuantityReader(text, wholeText: false).TryRead(out value, out consumed, out fault);

    /// <summary>Whether a quantity may start here: a digit, a point before a digit, or <c>about</c>, <c>dT</c> or <c>dP</c> before a figure.</summary>
    public static bool StartsAt(ReadOnlySpan<char> text) => QuantityReader.StartsAt(text);

    /// <summary>Reads a text that must be a quantity.</summary>
    /// <exception cref="FormatException">It is none; the message says why.</exception>
    public static Quantity Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return TryRead(text, out var value, out var fault) ? value : throw new FormatException($"'{text}': {fault}");
    }

    /// <summary>The quantity in SI units, such that reading it gives it back.</summary>
    public override string ToString() => ToString(UnitSystem.Si);

    /// <summary>
    /// The quantity in the units of a system, in the fewest digits from which reading gives the same quantity back
    /// (a count reads back where a count is due).
    /// </summary>
    public string ToString(UnitSystem system) => QuantityPrinter.Exact(this, system);

    /// <summary>The quantity for people: four figures, ranges rounded outward, "at least" and "at most" where a bound is open.</summary>
    public string ToDisplay(UnitSystem system) => QuantityPrinter.Display(this, system);

    /// <summary>
    /// The same for a value that was worked out: of a range of lengths only the figures that its width does not drown, rounded outward.
    /// 0.9195..1.061 in, a seventh of an inch wide, is told as 0.91..1.07 in. Torques, charges and pressures keep theirs: they are often ceilings.
    /// </summary>
    internal string ToDisplayWorkedOut(UnitSystem system) => QuantityPrinter.Display(this, system, isWorkedOut: true);
}
