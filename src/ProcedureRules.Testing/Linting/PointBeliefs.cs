using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Linting;

/// <summary>Beliefs in which everything that some conditions read is known: one of the cases that can be.</summary>
internal sealed class PointBeliefs : IBeliefs
{
    /// <summary>The value of each fact.</summary>
    public Dictionary<(int Slot, FactDefinition Fact), Value> Values { get; } = [];

    /// <summary>Whether each relation holds.</summary>
    public Dictionary<(Relation Relation, int First, int Second), Truth> Relations { get; } = [];

    public Value Fact(Part part, FactDefinition fact) => Values[(SlotOf(part), fact)];

    public Quantity Demanded(Part part, FactDefinition fact) => Quantity.Anything(fact.Type.Dimension.GetValueOrDefault());

    public Quantity Allowed(Part part, FactDefinition fact) => Quantity.Anything(fact.Type.Dimension.GetValueOrDefault());

    public Truth Related(Relation relation, Part a, Part b) => Relations[(relation, SlotOf(a), SlotOf(b))];

    public Truth Exists(Part part) => Truth.Yes;

    public IReadOnlyList<Part> PartsOf(Kind kind) => [];

    /// <summary>A part for each part variable, named after its slot.</summary>
    public static Binding Bind(CompiledRule rule) =>
        new([.. rule.Variables.Select(variable => variable.Kind is { } kind ? (object)new Part(NameOf(variable.Slot), kind) : variable)]);

    private static string NameOf(int slot) => slot.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static int SlotOf(Part part) => int.Parse(part.Name, System.Globalization.CultureInfo.InvariantCulture);
}
