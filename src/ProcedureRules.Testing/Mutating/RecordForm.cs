using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;
using ProcedureRules.Packs;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// What of a record the plan can hang on, under beliefs in which the rest is settled: what is settled stays so, whatever is found out or
/// chosen. Records of the same form lead to the same plan, so that a change that leaves it as it was cannot be noticed, and two changes that make
/// the same of it are tried once.
/// </summary>
internal sealed class RecordForm : IEquatable<RecordForm>
{
    private static readonly RecordForm Off = new([]);

    // Tests that are open, moments, effects; nothing of a record that cannot conclude.
    private readonly object[] _parts;

    private RecordForm(object[] parts, bool isSettled = true) => (_parts, IsSettled) = (parts, isSettled);

    /// <summary>Whether it concludes nothing, now and later.</summary>
    public bool IsOff => _parts.Length == 0;

    /// <summary>Whether none of its conditions is open.</summary>
    public bool IsSettled { get; }

    /// <summary>The form of a record.</summary>
    /// <param name="record">The record; need not be one of the beliefs' own.</param>
    /// <param name="beliefs">The beliefs.</param>
    /// <param name="withAllTests">Whether what is read counts as well as what comes of it.</param>
    public static RecordForm Of(Record record, BeliefState beliefs, bool withAllTests)
    {
        if (record.Effects.Count == 0) return Off;
        var tests = new List<Test>(record.Tests.Count);
        foreach (var test in record.Tests)
        {
            var truth = test.Evaluate(beliefs, record.Binding);
            if (truth == Truth.No) return Off;
            if (withAllTests || truth == Truth.Unknown) tests.Add(test);
        }

        var isOpen = tests.Count > 0 || record.Moments.Count > 0;
        for (var i = 0; i < record.Premises.Count; i++)
        {
            if (beliefs.Available(record.Premises[i]) == Assurance.No) return Off;
            isOpen = isOpen || IsOpen(record.Premises[i], beliefs);
        }

        return new RecordForm([.. tests, .. record.Moments, .. isOpen ? record.Effects : record.Effects.Select(WhateverIsUnknown)], isSettled: tests.Count == 0);
    }

    /// <inheritdoc/>
    public bool Equals(RecordForm? other) => other is not null && _parts.AsSpan().SequenceEqual(other._parts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RecordForm);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var part in _parts) hash.Add(part);
        return hash.ToHashCode();
    }

    private static bool IsOpen(Atom premise, BeliefState beliefs) =>
        premise is Atom.Exists or Atom.Related && (beliefs.Required(premise) != Assurance.Sure || beliefs.Available(premise) != Assurance.Sure);

    // What is done with the unknown is nothing where there is none.
    private static Effect WhateverIsUnknown(Effect effect) =>
        effect with { IfUnknown = IfUnknown.Default, Conclusion = effect.Conclusion is { } conclusion ? conclusion with { IfUnknown = IfUnknown.Default } : null };
}
