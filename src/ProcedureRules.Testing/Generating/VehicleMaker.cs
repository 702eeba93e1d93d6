using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Generating;

/// <summary>Makes vehicles out of what packs name: from an archetype with things changed, or from kinds picked at random.</summary>
internal sealed class VehicleMaker
{
    private static readonly Source[] Sources = [Source.Estimated, Source.Stated, Source.Stated, Source.Measured];
    private static readonly Truth[] Answers = [Truth.Yes, Truth.Yes, Truth.No, Truth.Unknown];
    private readonly Vocabulary _vocabulary;
    private readonly List<Situation> _bases = [];
    private readonly Kind _vehicle;

    public VehicleMaker(ProcedureEngine engine)
    {
        _vocabulary = engine.Vocabulary;
        _vehicle = new SituationBuilder(_vocabulary).Parts.First().Kind;
        var reader = new SheetReader(_vocabulary, engine.Archetypes);
        foreach (var archetype in engine.Archetypes.Keys.Order(StringComparer.Ordinal))
        {
            var bag = new DiagnosticBag();
            if (reader.Read(new SourceFile("", $"vehicle: {archetype}\narchetype: {archetype}\n"), null, bag) is { } read && !bag.HasErrors) _bases.Add(read);
        }
    }

    /// <summary>A vehicle with one job on it; without a job only where packs have none.</summary>
    public Situation Make(Random random, string? job)
    {
        var based = _bases.Count > 0 && random.Next(4) > 0 ? _bases[random.Next(_bases.Count)] : null;
        var builder = based is null ? new SituationBuilder(_vocabulary) : SituationBuilder.From(based);
        if (based is null) Parts(builder, random);
        else ChangeParts(builder, random);
        Ask(builder, random, job is null ? null : _vocabulary.Jobs[job]);
        builder.AddSilentParts();
        var parts = builder.PartsOf(_vocabulary.Kinds[Vocabulary.RootKind]).ToList();
        Relations(builder, parts, random, most: based is null ? 6 : 2);
        Facts(builder, parts, random);
        if (random.Next(8) == 0) Arrival(builder, parts, random);
        return builder.Build(based is null ? "Made up" : $"Made up, {based.Title}");
    }

    private void Parts(SituationBuilder builder, Random random)
    {
        var share = random.Next(2, 9);
        foreach (var kind in OrdinaryKinds().Where(_ => random.Next(10) < share))
            builder.State(new PartStatement(new Part(kind.Name, kind), Truth.Yes, Source.Stated));
    }

    private void ChangeParts(SituationBuilder builder, Random random)
    {
        foreach (var part in builder.Parts.Where(part => part.Kind != _vehicle && random.Next(12) == 0).ToList())
            builder.State(new PartStatement(part, random.Next(2) == 0 ? Truth.No : Truth.Unknown, Source.Stated));
        var kinds = OrdinaryKinds().ToList();
        for (var more = random.Next(4); more > 0; more--)
            if (kinds[random.Next(kinds.Count)] is var kind && builder.Find(kind.Name) is null)
                builder.State(new PartStatement(new Part(kind.Name, kind), Truth.Yes, Source.Stated));
    }

    private void Ask(SituationBuilder builder, Random random, JobDefinition? job)
    {
        var jobs = _vocabulary.Jobs.Values.ToList();
        if ((job ?? (jobs.Count == 0 ? null : jobs[random.Next(jobs.Count)])) is not { } asked) return;
        var kind = asked.On ?? _vehicle;
        if (builder.PartsOf(kind).FirstOrDefault() is not { } on || builder.StatementOn(on).Exists != Truth.Yes)
            builder.State(new PartStatement(on = builder.Find(kind.Name) ?? new Part(kind.Name, kind), Truth.Yes, Source.Stated));
        builder.Ask(new JobRequest(asked, on));
    }

    private void Relations(SituationBuilder builder, List<Part> parts, Random random, int most)
    {
        var relations = _vocabulary.Relations.Values.ToList();
        for (var count = relations.Count == 0 ? 0 : random.Next(most + 1); count > 0; count--)
        {
            var relation = relations[random.Next(relations.Count)];
            var pairs = parts.Where(part => part.Kind.IsA(relation.First)).SelectMany(_ => parts.Where(part => part.Kind.IsA(relation.Second)), (a, b) => (A: a, B: b))
                .Where(pair => parts.IndexOf(pair.A) < parts.IndexOf(pair.B)).ToList();
            if (pairs.Count == 0) continue;
            var (a, b) = pairs[random.Next(pairs.Count)];
            builder.State(new RelationStatement(relation, a, b, Answers[random.Next(Answers.Length)], Source.Stated));
        }
    }

    private void Facts(SituationBuilder builder, List<Part> parts, Random random)
    {
        var share = random.Next(1, 9);
        foreach (var part in parts)
            foreach (var fact in _vocabulary.FactsOf(part.Kind).Where(fact => Askable(fact) && random.Next(10) < share))
                builder.Observe(new Observation(new FactKey(part, fact), ValueMaker.Make(fact, random), Sources[random.Next(Sources.Length)]));
    }

    private void Arrival(SituationBuilder builder, List<Part> parts, Random random)
    {
        var part = parts[random.Next(parts.Count)];
        var aspects = _vocabulary.AspectsOf(part.Kind).ToList();
        if (aspects.Count == 0) return;
        var aspect = aspects[random.Next(aspects.Count)];
        builder.SetState(part, aspect, random.Next(aspect.States.Count));
    }

    private IEnumerable<Kind> OrdinaryKinds() => _vocabulary.Kinds.Values.Where(kind => kind.Parent is not null && kind != _vehicle);

    internal static bool Askable(FactDefinition fact) => !fact.IsDerived && !fact.IsDemand && !fact.Type.IsText;
}
