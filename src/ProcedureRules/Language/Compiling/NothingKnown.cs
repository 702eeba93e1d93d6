using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Language.Compiling;

/// <summary>
/// Beliefs in which nothing is known. Since every expression is monotone, what is yes or no under these is yes or no on every vehicle: the
/// check for conditions that can never, or always, hold.
/// </summary>
internal sealed class NothingKnown : IBeliefs
{
    public static readonly NothingKnown Beliefs = new();

    public Value Fact(Part part, FactDefinition fact) => Value.Unknown(fact);

    public Quantity Demanded(Part part, FactDefinition fact) => Quantity.Anything(fact.Type.Dimension.GetValueOrDefault());

    public Quantity Allowed(Part part, FactDefinition fact) => Quantity.Anything(fact.Type.Dimension.GetValueOrDefault());

    public Truth Related(Relation relation, Part a, Part b) => Truth.Unknown;

    public Truth Exists(Part part) => Truth.Unknown;

    public IReadOnlyList<Part> PartsOf(Kind kind) => [new(kind.Name, kind)];

    /// <summary>A part for each part variable, and nothing for steps, which expressions never read.</summary>
    public static Binding Bind(RuleScope scope) =>
        new([.. scope.Variables.Select(variable => variable.Kind is { } kind ? (object)new Part(variable.Name, kind) : variable)]);
}
