using System.CommandLine;
using System.Globalization;
using ProcedureRules.Quantities;

namespace ProcedureRules.ConsoleHost;

/// <summary>An option that takes one figure, with its unit or without where the unit goes without saying.</summary>
internal sealed class QuantityOption
{
    private readonly Option<string> _option;
    private readonly Unit _unit;

    public QuantityOption(string name, string description, string helpName, string unit, string byDefault)
    {
        _option = new Option<string>(name) { Description = description, HelpName = helpName, DefaultValueFactory = _ => byDefault };
        _unit = UnitTable.Find(unit)!;
    }

    public void AddTo(Command command) => command.Add(_option);

    /// <summary>The figure, or null with what is wrong with it.</summary>
    public Quantity? Read(ParseResult parsed, out string mistake)
    {
        var text = parsed.GetValue(_option)!.Trim();
        var isBare = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
        mistake = "";
        if (!Quantity.TryRead(Prefixed(isBare ? $"{text} {_unit.Symbol}" : text), _unit.Dimension, out var value, out var fault)) mistake = $"{_option.Name} '{text}': {fault}";
        else if (!value.IsPoint) mistake = $"{_option.Name} '{text}': one figure is due, not a range";
        else return value;
        return null;
    }

    // Where a difference is due it goes without saying that one is meant.
    private string Prefixed(string text) => _unit.Prefix is { } prefix && !text.StartsWith(prefix, StringComparison.Ordinal) ? $"{prefix} {text}" : text;
}
