using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads the turns of a scenario, following what is stated so that each is judged on what the vehicle has by then.</summary>
internal sealed class TurnReader(Situation start, RuleTexts texts, Workday workday, DiagnosticBag bag)
{
    private Situation _now = start;

    /// <summary>The start, and the turns after it.</summary>
    /// <param name="expect">What is expected at the start.</param>
    /// <param name="next">The turns.</param>
    public IReadOnlyList<Turn> Read(IEnumerable<YamlNode> expect, IEnumerable<YamlMapping> next)
    {
        var turns = new List<Turn> { new([], [], new ExpectationReader(_now, texts, workday, bag).Read(expect)) };
        foreach (var map in next)
        {
            var statements = map.Scalars("state").Where(Say).Select(said => said.Text).ToList();
            var names = new NameReader(_now, bag);
            var done = map.Scalars("done").Select(step => (step, pick: names.Step(step))).Where(entry => entry.pick is not null)
                .Select(entry => new StepExpected(entry.step.Span, $"done: {entry.step.Text}", entry.pick!, IsDue: true, IsSure: null)).ToList();
            turns.Add(new Turn(statements, done, new ExpectationReader(_now, texts, workday, bag).Read(map.List("expect"))));
        }

        return turns;
    }

    // The mistakes of a statement are told where it stands in the file.
    private bool Say(YamlScalar said)
    {
        var found = new DiagnosticBag();
        var next = StatementReader.Apply(said.Text, _now, Source.Measured, found);
        foreach (var mistake in found.Ordered())
            bag.Add(mistake with { Span = said.SpanAt(mistake.Span.Offset, mistake.Span.Length) });
        _now = next ?? _now;
        return next is not null;
    }
}
