using System.Globalization;
using System.Text.RegularExpressions;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A figure as a pack writes it, and the same moved by a step of its last place, or in another unit.</summary>
internal sealed partial record WrittenFigure(string Text, Quantity Value)
{
    private const double Near = 1e-9;

    /// <summary>The figures of a text that are a value, or have it as an end.</summary>
    public static WrittenFigure? In(string text, Quantity value)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if ((i > 0 && (char.IsLetterOrDigit(text[i - 1]) || text[i - 1] is '.' or '_' or '/')) || !Quantity.StartsAt(text.AsSpan(i))) continue;
            if (!Quantity.TryReadPrefix(text.AsSpan(i), out var read, out var length, out _)) continue;
            var figure = new WrittenFigure(text.Substring(i, length).TrimEnd(), read);
            if (DimensionRules.Accepts(value.Dimension, read.Dimension) && HasEnd(read.As(value.Dimension), value)) return figure;
            i += length - 1;
        }

        return null;
    }

    /// <summary>The figure with each of its numbers one step of the last place lower and higher.</summary>
    public IEnumerable<WrittenFigure> Moved()
    {
        foreach (var number in Number().Matches(Text).Where(IsNumber))
        {
            var (value, step) = Read(number);
            foreach (var moved in new[] { value - step, value + step })
                if (moved >= 0 && Reread(string.Concat(Text.AsSpan(0, number.Index), moved.ToString("0.#########", CultureInfo.InvariantCulture), Text.AsSpan(number.Index + number.Length))) is { } figure)
                    yield return figure;
        }
    }

    /// <summary>The same number in the next unit of its dimension; null where there is none.</summary>
    public WrittenFigure? InOtherUnit()
    {
        if (Number().Matches(Text).LastOrDefault(IsNumber) is not { } last) return null;
        var word = Text[(last.Index + last.Length)..].Trim();
        var unit = UnitTable.All.FirstOrDefault(unit => unit.Names.Contains(word));
        if (unit is null) return null;
        var others = UnitTable.All.Where(other => other.Dimension == unit.Dimension && other.Factor != unit.Factor).ToList();
        return others.Count == 0 ? null : Reread($"{Text[..(last.Index + last.Length)]} {(others.Find(other => other.Factor > unit.Factor) ?? others[0]).Symbol}");
    }

    private static bool HasEnd(Quantity read, Quantity value) =>
        IsNear(read.Low, value.Low) || IsNear(read.High, value.High) || IsNear(read.Low, value.High) || IsNear(read.High, value.Low);

    private static bool IsNear(double a, double b) => Math.Abs(a - b) <= Near * Math.Max(1e-6, Math.Abs(b));

    private static bool IsNumber(Match number) => number.Length > 0;

    private static (decimal Value, decimal Step) Read(Match number)
    {
        var whole = decimal.Parse(number.Groups["whole"] is { Success: true } first ? first.Value : "0", CultureInfo.InvariantCulture);
        if (number.Groups["denominator"] is { Success: true } denominator)
        {
            var parts = Math.Max(1, decimal.Parse(denominator.Value, CultureInfo.InvariantCulture));
            return (Math.Round(whole + (decimal.Parse(number.Groups["numerator"].Value, CultureInfo.InvariantCulture) / parts), 9), Math.Round(1 / parts, 9));
        }

        var text = number.Groups["plain"].Value;
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var places = point >= 0 ? text.Length - point - 1 : -(text.Length - text.TrimEnd('0').Length);
        var step = 1m;
        for (var i = 0; i < Math.Abs(places); i++) step = places > 0 ? step / 10 : step * 10;
        return (decimal.Parse(text, CultureInfo.InvariantCulture), text.Trim('0').Length == 0 ? 1 : step);
    }

    private WrittenFigure? Reread(string text) =>
        Quantity.TryReadPrefix(text, out var read, out var length, out _) && length == text.Length && read.Dimension == Value.Dimension && read != Value ? new(text, read) : null;

    [GeneratedRegex(@"(?<![A-Za-z0-9_.])(?:(?:(?<whole>[0-9]{1,9}) )?(?<numerator>[0-9]{1,9})/(?<denominator>[0-9]{1,9})|(?<plain>[0-9]{1,12}(?:\.[0-9]{1,9})?|\.[0-9]{1,9}))|(?<=\.\.)(?<plain>[0-9]{1,12}(?:\.[0-9]{1,9})?)", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
