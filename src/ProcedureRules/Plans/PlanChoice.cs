using ProcedureRules.Inference;
using ProcedureRules.Quantities;

namespace ProcedureRules.Plans;

/// <summary>A choice that the plan made, with the ways not taken.</summary>
public sealed class PlanChoice
{
    /// <summary>What is chosen.</summary>
    public required ChoiceKey Key { get; init; }

    /// <summary>The id by which it is fixed: <c>engine.hold</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Whether the technician fixed it.</summary>
    public required bool IsFixed { get; init; }

    /// <summary>What it is for.</summary>
    public required Wording Text { get; init; }

    /// <summary>Index of the way taken.</summary>
    public required int Taken { get; init; }

    /// <summary>The ways, in pack order.</summary>
    public required IReadOnlyList<Way> Ways { get; init; }

    /// <summary>Why the choice came up.</summary>
    public required IReadOnlyList<Reason> Because { get; init; }

    /// <summary>One way of a choice.</summary>
    /// <remarks>What it would cost takes planning of its own and is worked out when it is first asked for; safe on many threads.</remarks>
    public sealed class Way
    {
        private readonly Lazy<(Quantity? Labour, Wording? WhyNot)> _compared;

        internal Way(string id, Wording text, int rank, Func<(Quantity? Labour, Wording? WhyNot)> compare) =>
            (Id, Text, Rank, _compared) = (id, text, rank, new(compare));

        /// <summary>The id by which it is taken.</summary>
        public string Id { get; }

        /// <summary>The words.</summary>
        public Wording Text { get; }

        /// <summary>Its rank.</summary>
        public int Rank { get; }

        /// <summary>Labour of the whole plan with it, as far as its choices tell; null where it is not open or may not be gone.</summary>
        public Quantity? Labour => _compared.Value.Labour;

        /// <summary>Why it was not taken; null for the one taken.</summary>
        public Wording? WhyNot => _compared.Value.WhyNot;
    }
}
