using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Benchmarks;

/// <summary>A generated pack and vehicle, read as an embedder's would be.</summary>
internal sealed class GeneratedWorld
{
    public GeneratedWorld(PackGenerator source)
    {
        Engine = Load(source);
        var bag = new DiagnosticBag();
        Situation = new SheetReader(Rules.Vocabulary, new Dictionary<string, SourceFile>())
            .Read(new SourceFile("vehicle.yaml", source.Vehicle), null, bag) ?? throw new InvalidOperationException(bag.ToLines());
    }

    public ProcedureEngine Engine { get; }
    public RuleBase Rules => Engine.Rules;
    public Situation Situation { get; }

    /// <summary>From text to rules ready to run.</summary>
    public static ProcedureEngine Load(PackGenerator source)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("generated.yaml", source.Pack)]);
        return loaded.Engine ?? throw new InvalidOperationException(string.Join('\n', loaded.Diagnostics));
    }

    /// <summary>The first reading of the vehicle, measured again.</summary>
    public Observation Measured(int millimetres)
    {
        var first = Situation.Observations[0];
        return first with { Value = Value.Of(first.Value.Type, Quantity.Of(millimetres, "mm")), Source = Source.Measured };
    }

    /// <summary>The same as a supposition.</summary>
    public Supposition Reading(int millimetres) => new Supposition.Observed(Situation.Observations[0].Fact, [Measured(millimetres)]);

    /// <summary>From the situation to beliefs, nothing known before.</summary>
    public BeliefNetwork Believe() => BeliefNetwork.Build(new InferenceSession(Rules).Infer(Situation), new DiagnosticBag())!;

    /// <summary>How many of the rules surely hold: what the baseline must find as well, or the two do not do the same work.</summary>
    public int CountSure()
    {
        var network = Believe();
        return network.Records.Count(record => record.Effects.Count > 0 && network.Initial.Required(record, 0) == Assurance.Sure);
    }
}
