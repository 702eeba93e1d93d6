using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>A key that is not known, and what hangs on it.</summary>
internal sealed class Inquiry(Reading about)
{
    private readonly List<Wording> _matters = [];
    private readonly HashSet<object> _told = [];

    public Reading About { get; } = about;

    /// <summary>How soon it is asked: what can hurt first, then ways and work, then figures, then the rest.</summary>
    public Urgency Urgency { get; private set; } = Urgency.Other;

    public IReadOnlyList<Wording> Matters => _matters;

    /// <summary>The steps it decides on.</summary>
    public HashSet<Step> Steps { get; } = [];

    /// <summary>Whether something hangs on it that no condition of a rule says.</summary>
    public bool StandsAlone { get; private set; }

    /// <summary>What is asked before it, since the answer may make it needless.</summary>
    public IReadOnlyList<Reading> After { get; set; } = [];

    /// <summary>Adds what hangs on it; what is told of one subject counts once.</summary>
    public void Add(Matter matter)
    {
        if (matter.Urgency < Urgency) Urgency = matter.Urgency;
        if (matter.Step is not null) Steps.Add(matter.Step);
        if (_told.Add(matter.Subject)) _matters.Add(matter.Text);
        StandsAlone |= !matter.IsCondition;
    }
}
