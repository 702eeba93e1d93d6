using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Tests.Facts;

/// <summary>Makes situations of all that the base pack allows.</summary>
internal static class RandomSituation
{
    private static readonly Source[] Sources = [Source.Assumed, Source.Estimated, Source.Stated, Source.Measured];
    private static readonly Truth[] Truths = [Truth.No, Truth.Unknown, Truth.Yes];
    private static readonly string[] Texts = ["", "plain", "no", "unknown", "~", "null", "- a", "a: b", "a #b", "'", "\"\\", "two\nlines", "\u0085\u2028\u0007\uFEFF", "ümlaut ½ °", " spaced ", "{it}", "[a, b]", "1..2", "---", "a | b"];

    public static Situation Make(int seed)
    {
        var random = new Random(seed);
        var vocabulary = GivenSheets.Vocabulary;
        var builder = new SituationBuilder(vocabulary);
        var kinds = vocabulary.Kinds.Values.Where(kind => kind.Name != Vocabulary.VehicleKind).ToList();
        for (var count = random.Next(7); count > 0; count--)
        {
            var kind = Pick(kinds);
            var name = random.Next(2) == 0 ? kind.Name : $"p{random.Next(5)}_{kind.Name}";
            builder.State(new PartStatement(new Part(name, kind, random.Next(2) == 0 ? null : Pick(Texts)), Pick(Truths), Pick(Sources)));
        }

        builder.AddSilentParts();
        var parts = builder.PartsOf(vocabulary.Kinds[Vocabulary.RootKind]).ToList();
        for (var count = random.Next(12); count > 0; count--)
            State(Pick(parts));
        foreach (var job in vocabulary.Jobs.Values.Where(_ => random.Next(2) == 0))
        {
            if (builder.PartsOf(job.On ?? vocabulary.Kinds[Vocabulary.VehicleKind]).FirstOrDefault() is { } on)
                builder.Ask(new JobRequest(job, on));
        }

        return builder.Build(Pick(Texts));

        T Pick<T>(IReadOnlyList<T> all) => all[random.Next(all.Count)];

        void State(Part part)
        {
            var facts = vocabulary.Facts.Where(fact => part.Kind.IsA(fact.Kind) && !fact.IsDerived && !fact.IsDemand).ToList();
            if (facts.Count > 0)
            {
                var fact = Pick(facts);
                var isSure = fact.Type.IsQuantity && random.Next(2) == 0;
                builder.Take(new Observation(new FactKey(part, fact), ValueOf(fact.Type), Pick(Sources), random.Next(2) == 0 ? null : Pick(Texts), IsSure: isSure), "", new DiagnosticBag());
            }

            if (vocabulary.AspectsOf(part.Kind).ToList() is { Count: > 0 } aspects && Pick(aspects) is var aspect)
                builder.SetState(part, aspect, random.Next(aspect.States.Count));
            var fitting = vocabulary.Relations.Values.Where(relation => part.Kind.IsA(relation.First)).ToList();
            var seconds = builder.PartsOf(fitting[0].Second).Where(second => second != part).ToList();
            if (seconds.Count > 0)
                builder.State(new RelationStatement(fitting[0], part, Pick(seconds), Pick(Truths), Pick(Sources)));
        }

        Value ValueOf(FactType type)
        {
            if (type.IsText) return Value.OfText(Pick(Texts));
            if (type.IsWords) return Value.OfWords(type, (ulong)random.NextInt64(1, (long)Value.AllWords(type) + 1));
            var (low, high) = (random.NextDouble() * random.Next(1, 1000), 1000 + (random.NextDouble() * random.Next(1, 100_000)));
            return Value.Of(type, random.Next(2) == 0 ? Quantity.Point(low, type.Dimension!.Value) : Quantity.Between(low, high, type.Dimension!.Value));
        }
    }
}
