using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Nodes;

/// <summary>
/// A function of the library or of the embedding program. Whatever it does, the expression has a value: anything at all where it fails.
/// </summary>
internal sealed class HostCall : QuantityNode
{
    // Words are few; a call with more combinations of open words than this says nothing anyway.
    private const int MostCalls = 64;

    private readonly FunctionDefinition _function;
    private readonly Node[] _arguments;
    private readonly Action<string> _report;
    private readonly RecentCalls _recent = new();

    public HostCall(FunctionDefinition function, Node[] arguments, Action<string> report)
        : base(function.Returns)
    {
        (_function, _arguments, _report) = (function, arguments, report);
    }

    public override IReadOnlyList<Node> Children => _arguments;

    public override Quantity Evaluate(IBeliefs beliefs, Binding binding)
    {
        var (quantities, words) = (new Quantity[_arguments.Length], new string[_arguments.Length]);
        var open = new List<string>?[_arguments.Length];
        var calls = 1L;
        for (var i = 0; i < _arguments.Length; i++)
        {
            if (_arguments[i] is QuantityNode quantity)
            {
                quantities[i] = quantity.Evaluate(beliefs, binding).As(_function.Parameters[i].Dimension!.Value);
            }
            else
            {
                if (Open((WordsNode)_arguments[i], beliefs, binding, _function.Parameters[i]) is not { } known) return Quantity.Anything(Dimension);
                open[i] = known;
                words[i] = known[0];
                if ((calls *= known.Count) > MostCalls) return Quantity.Anything(Dimension);
            }
        }

        var result = Call(quantities, words);
        while (Next(open, words)) result = Quantity.Hull(result, Call(quantities, words));
        return result;
    }

    /// <summary>The words still open; null where the function does not know one of them.</summary>
    private static List<string>? Open(WordsNode node, IBeliefs beliefs, Binding binding, FunctionParameter parameter)
    {
        var bits = node.Evaluate(beliefs, binding);
        var open = new List<string>();
        for (var i = 0; i < node.Type.Words.Count; i++)
        {
            if ((bits >> i & 1) == 0) continue;
            if (!parameter.Words.Contains(node.Type.Words[i])) return null;
            open.Add(node.Type.Words[i]);
        }

        return open.Count == 0 ? null : open;
    }

    /// <summary>Counts on to the next combination of open words.</summary>
    private static bool Next(List<string>?[] open, string[] words)
    {
        for (var i = 0; i < open.Length; i++)
        {
            if (open[i] is not { } known) continue;
            var next = known.IndexOf(words[i]) + 1;
            words[i] = known[next % known.Count];
            if (next < known.Count) return true;
        }

        return false;
    }

    private Quantity Call(Quantity[] quantities, string[] words)
    {
        if (_recent.Of(quantities, words) is { } known) return known;
        try
        {
            string[] now = [.. words];
            var result = _function.Implementation(new(_function, quantities, now));
            if (DimensionRules.Accepts(Dimension, result.Dimension))
            {
                result = result.As(Dimension);
                _recent.Add(quantities, now, result);
                return result;
            }

            _report($"it gave {Dimensions.Phrase(result.Dimension)} instead of {Dimensions.Phrase(Dimension)}");
        }
#pragma warning disable CA1031 // A plan is never lost to a mistake in somebody else's function: its value is unknown then.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            _report(exception.Message);
        }

        return Quantity.Anything(Dimension);
    }
}
