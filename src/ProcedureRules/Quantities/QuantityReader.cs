using System.Globalization;

namespace ProcedureRules.Quantities;

/// <summary>Reads one quantity: <c>[about] [dT|dP] end [.. end | +/- end]</c>, where an end is figures with their units.</summary>
internal ref partial struct QuantityReader(ReadOnlySpan<char> text, bool wholeText)
{
    private static readonly ExactNumber About = ExactNumber.Parse(Quantity.AboutShare.ToString(CultureInfo.InvariantCulture));

    private readonly ReadOnlySpan<char> _text = text;
    private int _at;
    private string? _prefix;
    private QuantityFault? _fault;

    public static bool StartsAt(ReadOnlySpan<char> text)
    {
        if (FigureScanner.StartsAt(text, 0)) return true;
        var reader = new QuantityReader(text, wholeText: false);
        var hasAbout = reader.TakeWord("about");
        var hasPrefix = reader.TakePrefix();
        reader.TakeMinus();
        return (hasAbout || hasPrefix) && FigureScanner.StartsAt(text, reader._at);
    }

    public bool TryRead(out Quantity value, out int consumed, out QuantityFault? fault)
    {
        value = default;
        SkipBlanks();
        var aboutAt = _at;
        var about = TakeWord("about");
        TakePrefix();
        var ok = TryTerm(out var first);
        consumed = _at;
        if (ok)
        {
            SkipBlanks();
            if (about) ok = TryAbout(first, aboutAt, out value);
            else if (TakeRangeMark()) ok = TrySecond(first, isTolerance: false, out value, out consumed);
            else if (TakeToleranceMark()) ok = TrySecond(first, isTolerance: true, out value, out consumed);
            else ok = IsFinite(first) && TryInterval(first.Bound, first.Bound, first, out value);
        }

        if (ok && _prefix is not null && value.Dimension == Dimension.Number) ok = FailWithoutUnit();

        if (ok && wholeText)
        {
            SkipBlanks();
            if (_at < _text.Length) ok = Fail(QuantityFaults.AtRest(_text, _at, value.Dimension != Dimension.Number));
        }

        fault = ok ? null : _fault;
        if (ok) return true;
        (value, consumed) = (default, 0);
        return false;
    }

    private bool TryTerm(out QuantityTerm term)
    {
        var start = _at;
        term = default;
        var minus = TakeMinus();
        if (TakeWord("inf"))
        {
            var infinite = new QuantityTerm(0, TakeUnit(), start, _at - start) { Infinite = minus ? -1 : 1 };
            term = infinite;
            return true;
        }

        if (!FigureScanner.StartsAt(_text, _at)) return Fail(QuantityFaults.NotANumber(_text, _at));
        if (!FigureScanner.TryScan(_text, ref _at, out var figure, out _fault)) return false;
        var unit = TakeUnit();
        if (unit is null && !CheckWordAfterFigure()) return false;
        term = new(minus ? -figure : figure, unit, start, _at - start);
        return unit?.CompoundGroup is null || TryMoreUnits(ref term, figure, minus);
    }

    private bool TryMoreUnits(ref QuantityTerm term, ExactNumber lastFigure, bool minus)
    {
        var last = term.Unit!;
        while (true)
        {
            var back = _at;
            SkipBlanks();
            if (wholeText && (Take(",") || TakeWord("and"))) SkipBlanks();
            var figureAt = _at;
            if (!FigureScanner.StartsAt(_text, _at) || !FigureScanner.TryScan(_text, ref _at, out var figure, out _)) return Restore(back);
            var unit = TakeUnit();
            if (unit is null || unit.CompoundGroup != last.CompoundGroup) return Restore(back);
            if (!(unit.ExactFactor < last.ExactFactor))
                return Fail(QuantityFaultKind.BadCompound, $"{unit.Symbol} cannot follow {last.Symbol}: the larger unit comes first", figureAt, _at);
            if (!lastFigure.IsWhole)
                return Fail(QuantityFaultKind.BadCompound, "only the last of several units has a fraction", term.Offset, _at);
            var part = unit.ToBase(figure);
            term = term with { More = term.More + (minus ? -part : part), IsCompound = true, Length = _at - term.Offset };
            (last, lastFigure) = (unit, figure);
        }
    }

    private bool TrySecond(QuantityTerm first, bool isTolerance, out Quantity value, out int consumed)
    {
        (value, consumed) = (default, 0);
        SkipBlanks();
        if (!TryTerm(out var second)) return false;
        consumed = _at;
        var isShare = isTolerance && second.Unit?.Symbol == "%" && first.Unit?.Symbol != "%";
        if (!isShare)
        {
            (first, second) = (first.WithUnitOf(second), second.WithUnitOf(first));
            if (first.Unit is null != second.Unit is null)
                return Fail(QuantityFaultKind.MissingUnit, "each end needs its unit", first.Offset, _at);
            if (first.Dimension != second.Dimension)
            {
                var message = $"one end is {Dimensions.Phrase(first.Dimension)}, the other {Dimensions.Phrase(second.Dimension)}";
                return Fail(QuantityFaultKind.MixedDimensions, message, first.Offset, _at);
            }
        }

        return isTolerance ? TryTolerance(first, second, isShare, out value) : TryRange(first, second, out value);
    }

    private bool TryRange(QuantityTerm first, QuantityTerm second, out Quantity value)
    {
        var (a, b) = (first.Bound, second.Bound);
        value = default;
        if ((first.Infinite == 0 && double.IsInfinity(a)) || (second.Infinite == 0 && double.IsInfinity(b))) return FailTooLarge(first);
        var isDepth = first.Unit?.IsDepth == true && second.Unit?.IsDepth == true;
        return TryInterval(isDepth ? b : a, isDepth ? a : b, first, out value);
    }

    private bool TryTolerance(QuantityTerm first, QuantityTerm second, bool isShare, out Quantity value)
    {
        value = default;
        if (!IsFinite(first) || !IsFinite(second)) return false;
        var isScale = isShare && first.Dimension == Dimension.Temperature;
        if (isScale || second.Figure.Sign < 0)
        {
            var message = isScale ? "a share of a temperature depends on its scale" : "a tolerance cannot be negative";
            return Fail(QuantityFaultKind.BadTolerance, message, second.Offset, _at);
        }

        var span = isShare ? first.Value.Abs() * second.Value : second.Span;
        return TrySpread(first, span, out value);
    }

    private bool TrySpread(QuantityTerm term, ExactNumber span, out Quantity value)
    {
        var (low, high) = ((term.Value - span).ToDouble(), (term.Value + span).ToDouble());
        value = default;
        return double.IsFinite(low) && double.IsFinite(high) ? TryInterval(low, high, term, out value) : FailTooLarge(term);
    }

    private bool TryAbout(QuantityTerm term, int aboutAt, out Quantity value)
    {
        value = default;
        if (!IsFinite(term)) return false;
        if (term.Dimension == Dimension.Temperature || term.Value.Sign == 0)
        {
            var message = term.Value.Sign == 0 ? "a share of zero is nothing: write a range" : "a share of a temperature depends on its scale: write a range";
            return Fail(QuantityFaultKind.BadAbout, message, aboutAt, aboutAt + "about".Length);
        }

        return TrySpread(term, term.Value.Abs() * About, out value);
    }

    private bool TryInterval(double low, double high, QuantityTerm first, out Quantity value)
    {
        value = default;
        if (low > high) return Fail(QuantityFaultKind.BackwardRange, "the range runs backwards: the lesser end comes first", first.Offset, _at);
        if (double.IsPositiveInfinity(low) || double.IsNegativeInfinity(high)) return FailTooLarge(first);
        value = Quantity.Between(low, high, first.Dimension);
        return true;
    }

    private bool IsFinite(QuantityTerm term) =>
        term.Infinite == 0 || Fail(QuantityFaultKind.NotANumber, "only a range can be open", term.Offset, term.Offset + term.Length);
}
