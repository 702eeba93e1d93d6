using System.CommandLine;
using ProcedureRules.Quantities;

namespace ProcedureRules.ConsoleHost;

/// <summary>The option that says in which units figures are printed.</summary>
internal static class UnitsOption
{
    public static Option<string> Create()
    {
        var option = new Option<string>("--units") { Description = "units of figures", DefaultValueFactory = _ => "us" };
        option.AcceptOnlyFromAmong("us", "si");
        return option;
    }

    public static UnitSystem Read(ParseResult parsed, Option<string> option) =>
        parsed.GetValue(option) == "si" ? UnitSystem.Si : UnitSystem.Us;
}
