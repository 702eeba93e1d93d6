using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>Finds the records that a fact, a demand, a relation or the existence of a part matters to, and the other way round.</summary>
internal sealed class ReadingIndex
{
    private readonly Dictionary<Record, IReadOnlyList<Reading>> _readings = [];
    private readonly Dictionary<Reading, List<Record>> _readers = [];

    public ReadingIndex(IReadOnlyList<Record> records, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        foreach (var record in records)
        {
            var readings = new List<Reading>();
            _readings[record] = readings;
            foreach (var reading in Of(record, partsOf))
            {
                if (readings.Contains(reading)) continue;
                readings.Add(reading);
                if (!_readers.TryGetValue(reading, out var readers)) _readers[reading] = readers = [];
                readers.Add(record);
            }
        }
    }

    public IReadOnlyList<Reading> Of(Record record) => _readings[record];

    public IReadOnlyList<Record> ReadersOf(Reading reading) => _readers.GetValueOrDefault(reading, []);

    private static IEnumerable<Reading> Of(Record record, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        foreach (var test in record.Tests)
            foreach (var reading in test.Reads(record.Binding, partsOf)) yield return reading;
        foreach (var effect in record.Effects)
            foreach (var reading in Of(effect.Conclusion, record.Binding, partsOf)) yield return reading;
        foreach (var premise in record.Premises)
        {
            if (premise is Atom.Related related) yield return new Reading.OfRelation(related.Relation, related.A, related.B);
            else if (premise is Atom.Exists exists) yield return new Reading.OfPart(exists.Part);
        }
    }

    /// <summary>What a conclusion reckons with.</summary>
    public static IEnumerable<Reading> Of(Conclusion? conclusion, Binding binding, Func<Kind, IReadOnlyList<Part>> partsOf)
    {
        return conclusion switch
        {
            Conclusion.Set set => set.Value.Reads(binding, partsOf),
            Conclusion.Demand demand => demand.Value.Reads(binding, partsOf),
            Conclusion.Check check => check.Limits.Reads(binding, partsOf),
            Conclusion.Slower slower => slower.Factor.Reads(binding, partsOf),
            Conclusion.Figure figure => [FactOf(figure.Slot, figure.Fact)],
            Conclusion.Know know => [FactOf(know.Slot, know.Fact)],
            Conclusion.Wait wait => [.. Of(wait.Least), .. Of(wait.Most), .. wait.Since is { } since ? [FactOf(since.Slot, since.Fact)] : Array.Empty<Reading>()],
            _ => [],
        };

        Reading FactOf(int slot, FactDefinition fact) => new Reading.OfFact(new(binding.Part(slot), fact));

        IEnumerable<Reading> Of(ValueExpression? value) => value?.Reads(binding, partsOf) ?? [];
    }
}
