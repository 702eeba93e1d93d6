using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Beliefs;

/// <summary>What is believed under one set of statements and choices. Immutable; safe on many threads; shares its network.</summary>
public sealed class BeliefState : IBeliefs
{
    /// <summary>The network.</summary>
    public BeliefNetwork Network => throw new NotImplementedException();

    /// <summary>How firmly an atom stands without any condition on a moment of the plan.</summary>
    public Assurance Required(Atom atom) => throw new NotImplementedException();

    /// <summary>How firmly an atom stands where conditions on moments are taken as met.</summary>
    public Assurance Available(Atom atom) => throw new NotImplementedException();

    /// <summary>Yes: required sure; no: not even available; else unknown.</summary>
    public Truth TruthOf(Atom atom) => throw new NotImplementedException();

    /// <summary>How firmly an effect stands without any condition on a moment (a record with such a condition: not at all).</summary>
    public Assurance Required(Record record, int effect) => throw new NotImplementedException();

    /// <summary>How firmly an effect stands where conditions on moments are taken as met.</summary>
    public Assurance Available(Record record, int effect) => throw new NotImplementedException();

    /// <summary>How firmly an effect stands once a step occurs, where conditions on moments are taken as met.</summary>
    public Assurance Given(Record record, int effect, Step step) => throw new NotImplementedException();

    /// <summary>The truth of one of a record's tests.</summary>
    public Truth TruthOf(Record record, int test) => throw new NotImplementedException();

    /// <summary>Where the merged value of a fact comes from: the rank it surely has; none where it is not known.</summary>
    public Source SourceOf(FactKey key) => throw new NotImplementedException();

    /// <summary>The demands on a fact.</summary>
    public DemandBand Demands(FactKey key) => throw new NotImplementedException();

    /// <summary>The option of a choice that is taken; null while it is open.</summary>
    public int? Taken(ChoiceKey choice) => throw new NotImplementedException();

    /// <summary>Facts whose statements contradict each other.</summary>
    public IReadOnlyList<Conflict> Conflicts => throw new NotImplementedException();

    /// <summary>Facts whose sure demands leave no value.</summary>
    public IReadOnlyList<EmptyBand> EmptyBands => throw new NotImplementedException();

    /// <summary>The beliefs with some inputs changed.</summary>
    public BeliefState With(IReadOnlyList<Supposition> suppositions) => throw new NotImplementedException();

    /// <inheritdoc/>
    public Value Fact(Part part, FactDefinition fact) => throw new NotImplementedException();

    /// <inheritdoc cref="IBeliefs.Demanded"/>
    public Quantity Demanded(Part part, FactDefinition fact) => throw new NotImplementedException();

    /// <inheritdoc/>
    public Truth Related(Relation relation, Part a, Part b) => throw new NotImplementedException();

    /// <inheritdoc/>
    public Truth Exists(Part part) => throw new NotImplementedException();

    /// <inheritdoc/>
    public IReadOnlyList<Part> PartsOf(Kind kind) => throw new NotImplementedException();
}
