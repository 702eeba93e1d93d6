using ProcedureRules.Choosing;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Planning;

/// <summary>What kept sets of choices from becoming plans.</summary>
internal sealed class Failures
{
    private readonly List<Diagnostic> _diagnostics = [];
    private readonly List<(Decision Decision, IReadOnlyList<Fault> Faults)> _stopped = [];

    /// <summary>How many sets of choices were searched for an order in vain, here and in an attempt before.</summary>
    public int InVain { get; private set; }

    /// <summary>How often steps made no plan, searched or proved to have none, here and in an attempt before.</summary>
    public int Rejected { get; set; }

    /// <summary>Whether it was proved of some steps, here or in an attempt before, that they have no order.</summary>
    public bool HasProof { get; set; }

    /// <summary>The first set of choices whose steps have no order.</summary>
    public Decision? Unordered { get; private set; }

    /// <summary>The first set of choices that something stands against.</summary>
    public Decision? Stopped => _stopped.Count > 0 ? _stopped[0].Decision : null;

    /// <summary>What is wrong with the sets of choices that nothing stands against.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics => _diagnostics;

    /// <summary>Whether a set of choices was found against which nothing sure stands.</summary>
    public bool MayGoOn => _stopped.Any(stopped => stopped.Faults.All(fault => !fault.IsSure));

    /// <summary>Something stands against a set of choices.</summary>
    public void Stop(Decision decision, IReadOnlyList<Fault> faults) => _stopped.Add((decision, faults));

    /// <summary>The steps of a set of choices have no order, or none was found.</summary>
    public void HasNoOrder(Decision decision, Diagnostic diagnostic, bool isProved)
    {
        _diagnostics.Add(diagnostic);
        Unordered ??= decision;
        if (!isProved) InVain++;
    }

    /// <summary>A draft did not pass its check.</summary>
    public void Reject(Diagnostic diagnostic)
    {
        _diagnostics.Add(diagnostic);
        InVain++;
    }

    /// <summary>What the next attempt starts from.</summary>
    public Failures Again() => new() { InVain = InVain, Rejected = Rejected, HasProof = HasProof };

    /// <summary>What stands against every way is what stops the job; where each way has its own reason, all of them are told.</summary>
    public IReadOnlyList<Fault> WhatStops()
    {
        var all = _stopped.SelectMany(stopped => stopped.Faults).DistinctBy(Subject).ToList();
        var common = all.Where(fault => _stopped.TrueForAll(stopped => stopped.Faults.Any(other => Subject(other).Equals(Subject(fault))))).ToList();
        return common.Count > 0 ? common : all;

        static object Subject(Fault fault) => fault.Atom is { } atom ? (fault.Record, atom) : fault.Text.ToString();
    }
}
