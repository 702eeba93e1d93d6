using ProcedureRules.Language;
using ProcedureRules.Mechanics;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Mechanics;

/// <summary>Calls a function as a pack does: figures as text, words as they are.</summary>
internal static class Call
{
    public static Quantity Of(string name, params string[] arguments)
    {
        var function = Find(name);
        var quantities = new Quantity[arguments.Length];
        var words = new string[arguments.Length];
        for (var i = 0; i < arguments.Length; i++)
        {
            words[i] = arguments[i];
            if (function.Parameters[i].Dimension is { } due) quantities[i] = Read(arguments[i]).As(due);
        }

        return function.Implementation(new(function, quantities, words));
    }

    public static Quantity Of(string name, string word, params Quantity[] quantities)
    {
        var function = Find(name);
        return function.Implementation(new(function, [default, .. quantities], [word, .. quantities.Select(_ => "")]));
    }

    public static Quantity Of(string name, params Quantity[] quantities)
    {
        var function = Find(name);
        return function.Implementation(new(function, quantities, new string[quantities.Length]));
    }

    public static FunctionDefinition Find(string name) => MechanicsFunctions.All.Single(function => function.Name == name);

    public static Quantity Read(string figure) => Quantity.Read(figure);

    /// <summary>The middle of a result as a figure in a unit; the result must be as narrow as rounding leaves it.</summary>
    public static double In(this Quantity value, string unit)
    {
        var (low, high) = value.In(UnitTable.Find(unit)!);
        Xunit.Assert.InRange(high - low, 0, 1e-9 * Math.Max(1, Math.Abs(high)));
        return (low + high) / 2;
    }
}
