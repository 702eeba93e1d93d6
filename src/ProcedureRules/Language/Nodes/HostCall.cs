using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>A function of the embedding program. Whatever it does, the expression has a value: anything at all where it fails.</summary>
internal sealed class HostCall(FunctionDefinition function, QuantityNode[] arguments, Action<string> report) : QuantityNode(function.Returns)
{
    public override IReadOnlyList<Node> Children { get; } = arguments;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding)
    {
        var values = new Quantity[arguments.Length];
        for (var i = 0; i < values.Length; i++) values[i] = arguments[i].Evaluate(beliefs, binding).As(function.Parameters[i].Dimension);
        try
        {
            var result = function.Implementation(values);
            if (DimensionRules.Accepts(Dimension, result.Dimension)) return result.As(Dimension);
            report($"it gave {Dimensions.Phrase(result.Dimension)} instead of {Dimensions.Phrase(Dimension)}");
        }
#pragma warning disable CA1031 // A plan is never lost to a mistake in somebody else's function: its value is unknown then.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            report(exception.Message);
        }

        return Quantity.Anything(Dimension);
    }
}
