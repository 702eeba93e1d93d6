using ProcedureRules.Facts;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Generating;

/// <summary>Makes values that a fact can have, with round figures where there are any.</summary>
internal static class ValueMaker
{
    private const int Marks = 8;

    /// <summary>A value: mostly one figure or word, now and then several that are left open.</summary>
    public static Value Make(FactDefinition fact, Random random)
    {
        if (fact.Type.IsQuantity) return Value.Of(fact.Type, OneOf(fact, random));
        var word = 1UL << random.Next(fact.Type.Words.Count);
        return Value.OfWords(fact.Type, random.Next(6) == 0 ? word | (1UL << random.Next(fact.Type.Words.Count)) : word);
    }

    /// <summary>The values that are simpler than one and lie within it.</summary>
    public static IEnumerable<Value> Simpler(Value value)
    {
        if (value.IsPoint) yield break;
        if (value.Type.IsQuantity)
        {
            foreach (var bound in new[] { value.Quantity.Low, value.Quantity.High }.Where(double.IsFinite))
                yield return Value.Of(value.Type, Quantity.Point(bound, value.Quantity.Dimension));
        }
        else if (value.Type.IsWords)
        {
            for (var word = 0; word < value.Type.Words.Count; word++)
                if ((value.Words >> word & 1) != 0) yield return Value.OfWords(value.Type, 1UL << word);
        }
    }

    private static Quantity OneOf(FactDefinition fact, Random random)
    {
        var range = Value.Unknown(fact).Quantity;
        var low = double.IsFinite(range.Low) ? range.Low : 0;
        var high = double.IsFinite(range.High) ? range.High : low + 100;
        var (one, other) = (Mark(), Mark());
        var made = random.Next(4) == 0 ? Quantity.Between(Math.Min(one, other), Math.Max(one, other), range.Dimension) : Quantity.Point(one, range.Dimension);
        // As a technician would write it, where that still occurs.
        return Quantity.TryRead(made.ToDisplay(UnitSystem.Us), range.Dimension, out var round, out _) && range.Contains(round) ? round : made;

        double Mark() => low + ((high - low) * random.Next(Marks + 1) / Marks);
    }
}
