using ProcedureRules.Logic;

namespace ProcedureRules.Beliefs;

/// <summary>What is believed of an atom, on both layers.</summary>
internal readonly record struct AtomLabel(Assurance Required, Assurance Available, RankRange Rank)
{
    public Truth Truth => Required == Assurance.Sure ? Truth.Yes : Available == Assurance.No ? Truth.No : Truth.Unknown;
}
