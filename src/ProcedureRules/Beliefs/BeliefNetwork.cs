using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Beliefs;

/// <summary>The records of a situation as a network: what rests on what, and where to find it. Immutable; safe on many threads.</summary>
public sealed class BeliefNetwork
{
    /// <summary>Builds the network. A ring through a condition that is read gives an error that names rules and parts, and no network.</summary>
    public static BeliefNetwork? Build(InferenceResult result, DiagnosticBag diagnostics) => throw new NotImplementedException();

    /// <summary>What it was built from.</summary>
    public InferenceResult Result => throw new NotImplementedException();

    /// <summary>The beliefs under the situation as stated, every choice open.</summary>
    public BeliefState Initial => throw new NotImplementedException();

    /// <summary>The records, in the order of inference.</summary>
    public IReadOnlyList<Record> Records => throw new NotImplementedException();

    /// <summary>The effects that conclude an atom.</summary>
    public IReadOnlyList<RecordEffect> RecordsSupporting(Atom atom) => throw new NotImplementedException();

    /// <summary>The effects with a conclusion of a type, in the order of the records.</summary>
    public IReadOnlyList<RecordEffect> RecordsWith<TConclusion>() where TConclusion : Conclusion => throw new NotImplementedException();

    /// <summary>The atoms of a type that occur in records, in the order of the records.</summary>
    public IReadOnlyList<TAtom> AtomsOf<TAtom>() where TAtom : Atom => throw new NotImplementedException();

    /// <summary>The effects attached to a step: its needs, cautions, checks, tools, order, waits...</summary>
    public IReadOnlyList<RecordEffect> RecordsAbout(Step step) => throw new NotImplementedException();

    /// <summary>The effects attached to no step: end states, waypoints, stops, cautions at the head of the plan...</summary>
    public IReadOnlyList<RecordEffect> RecordsAboutNoStep => throw new NotImplementedException();

    /// <summary>The records that read a key in a test, in a value or as a premise.</summary>
    public IReadOnlyList<Record> Readers(Reading reading) => throw new NotImplementedException();

    /// <summary>The keys that the tests and values of a record read.</summary>
    public IReadOnlyList<Reading> ReadingsOf(Record record) => throw new NotImplementedException();

    /// <summary>Whether the records answer for a supposition; if not, it takes a new inference.</summary>
    public bool Covers(Supposition supposition) => throw new NotImplementedException();
}
