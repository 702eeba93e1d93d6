namespace ProcedureRules.Quantities;

// The words and marks a quantity is made of, and the ways it can fail.
internal ref partial struct QuantityReader
{
    // In an expression a word may follow a number (2 and ...), but not touch it, and not be half a unit.
    private bool CheckWordAfterFigure()
    {
        var isTouching = _at < _text.Length && (char.IsLetter(_text[_at]) || _text[_at] == '_');
        if (isTouching) return Fail(QuantityFaults.UnknownUnit(_text, _at, QuantityFaults.WordAt(_text, _at)));
        var back = _at;
        SkipBlanks();
        return QuantityFaults.Ambiguous(_text, _at) is { } fault ? Fail(fault) : Restore(back);
    }

    private bool FailWithoutUnit()
    {
        if (QuantityFaults.WordAt(_text, _at) is { Length: > 0 } word) return Fail(QuantityFaults.UnknownUnit(_text, _at, word));
        var kind = _prefix == UnitTable.TemperatureDifferencePrefix ? "temperature" : "pressure";
        return Fail(QuantityFaultKind.MissingUnit, $"after {_prefix} a figure needs a unit of {kind}", _at, _at);
    }

    private Unit? TakeUnit()
    {
        var back = _at;
        SkipBlanks();
        if (!UnitMatcher.TryMatch(_text[_at..], _prefix, out var unit, out var length))
        {
            _at = back;
            return null;
        }

        _at += length;
        // The full stop of an abbreviation (2 in., 5 lbs.) belongs to the unit, the dots of a range do not.
        var isStop = _at < _text.Length && _text[_at] == '.' && char.IsLetter(_text[_at - 1])
            && (_at + 1 == _text.Length || char.IsWhiteSpace(_text[_at + 1]));
        if (isStop) _at++;
        return unit;
    }

    private bool TakePrefix()
    {
        foreach (var prefix in (ReadOnlySpan<string>)[UnitTable.TemperatureDifferencePrefix, UnitTable.PressureDifferencePrefix])
        {
            if (!TakeWord(prefix)) continue;
            _prefix = prefix;
            return true;
        }

        return false;
    }

    private bool TakeWord(string word)
    {
        var rest = _text[_at..];
        if (!rest.StartsWith(word, StringComparison.Ordinal)) return false;
        if (rest.Length > word.Length && (char.IsLetterOrDigit(rest[word.Length]) || rest[word.Length] == '_')) return false;
        _at += word.Length;
        if (word != "inf") SkipBlanks();
        return true;
    }

    private bool TakeMinus() => Take("-") || Take("\u2212");

    private bool TakeRangeMark() => Take("..") || Take("\u2013");

    private bool TakeToleranceMark() => Take("+/-") || Take("\u00B1");

    private bool Take(string mark)
    {
        if (!_text[_at..].StartsWith(mark, StringComparison.Ordinal)) return false;
        _at += mark.Length;
        return true;
    }

    private void SkipBlanks()
    {
        while (_at < _text.Length && char.IsWhiteSpace(_text[_at])) _at++;
    }

    private bool Restore(int at)
    {
        _at = at;
        return true;
    }

    private bool FailTooLarge(QuantityTerm term) =>
        Fail(QuantityFaultKind.TooLarge, "the number is beyond every measure", term.Offset, _at);

    private bool Fail(QuantityFaultKind kind, string message, int from, int to) =>
        Fail(new QuantityFault(kind, message, from, Math.Max(0, to - from)));

    private bool Fail(QuantityFault fault)
    {
        _fault = fault;
        return false;
    }
}
