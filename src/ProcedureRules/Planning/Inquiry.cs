using ProcedureRules.Language;

namespace ProcedureRules.Planning;

/// <summary>A key that is not known, and what hangs on it.</summary>
internal sealed class Inquiry(Reading about)
{
    private readonly List<Wording> _matters = [];

    public Reading About { get; } = about;

    /// <summary>How soon it is asked: what can hurt first, then ways and work, then figures, then the rest.</summary>
    public Urgency Urgency { get; private set; } = Urgency.Other;

    public IReadOnlyList<Wording> Matters => _matters;

    /// <summary>The steps it decides on.</summary>
    public HashSet<Step> Steps { get; } = [];

    public void Add(Urgency urgency, Wording matter, Step? step)
    {
        if (urgency < Urgency) Urgency = urgency;
        if (step is not null) Steps.Add(step);
        if (!_matters.Any(other => other.ToString() == matter.ToString())) _matters.Add(matter);
    }
}
