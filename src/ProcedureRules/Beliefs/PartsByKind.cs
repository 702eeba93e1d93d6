using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Beliefs;

/// <summary>The parts of each kind that exist or may.</summary>
internal sealed class PartsByKind
{
    private readonly Dictionary<Kind, IReadOnlyList<Part>> _parts;

    public PartsByKind(Situation situation)
    {
        var possible = situation.Parts.Where(part => Statements.OfPart(situation, part).Level > Assurance.No).ToList();
        _parts = possible.SelectMany(part => part.Kind.Lineage()).Distinct()
            .ToDictionary(kind => kind, kind => (IReadOnlyList<Part>)possible.Where(part => part.Kind.IsA(kind)).ToList());
    }

    public IReadOnlyList<Part> Of(Kind kind) => _parts.GetValueOrDefault(kind, []);
}
