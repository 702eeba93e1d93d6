using System.Globalization;
using System.Text;
using Google.OrTools.Sat;
using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Logic;
using Xunit;

namespace ProcedureRules.Tests.Choosing;

/// <summary>
/// A random choice program with negation, once as a pack and once as a model for an exact solver: choices whose ways do work and leave marks,
/// choices and work that come up only where a mark is there or is not, prohibitions.
/// </summary>
internal sealed class ChoiceProgram
{
    private readonly List<Choice> _choices = [];
    private readonly List<(int Work, Sign[] When)> _work = [];
    private readonly List<(int Work, Sign[] When)> _forbidden = [];
    private readonly (int Low, int High)[] _times;

    public ChoiceProgram(Random random)
    {
        _times = [.. Enumerable.Range(0, random.Next(4, 10)).Select(_ => (random.Next(1, 30), 0)).Select(time => (time.Item1, time.Item1 + random.Next(0, 30)))];
        var count = random.Next(2, 7);
        for (var c = 0; c < count; c++)
        {
            // A choice reads only the marks that choices before it leave: no ring through a negation.
            var marks = c;
            _choices.Add(new Choice(
                random.Next(3) == 0 ? Signs(random, marks) : [],
                [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => new Way(
                    random.Next(4) == 0 ? random.Next(3) : 0,
                    random.Next(4) == 0 ? Signs(random, marks) : [],
                    [.. Enumerable.Range(0, random.Next(0, 3)).Select(_ => random.Next(_times.Length)).Distinct()],
                    random.Next(2) == 0))]));
        }
        for (var i = random.Next(0, 5); i > 0; i--) _work.Add((random.Next(_times.Length), Signs(random, count)));
        for (var i = random.Next(0, 3); i > 0; i--) _forbidden.Add((random.Next(_times.Length), Signs(random, count)));
    }

    /// <summary>The beliefs of the pack, every choice open.</summary>
    public BeliefState Believe() => Believe(ToPack());

    /// <summary>The beliefs of a pack on a vehicle with one part of each of its kinds, its job <c>run</c> asked for.</summary>
    public static BeliefState Believe(string pack)
    {
        var loaded = ProcedureEngine.Load([new SourceFile("program.yaml", pack)]);
        Assert.True(loaded.Engine is not null, string.Concat(loaded.Diagnostics.Select(mistake => mistake.ToSnippet())));
        var vocabulary = loaded.Engine.Vocabulary;
        var parts = vocabulary.Kinds.Values.Where(kind => kind.Name != "part").Select(kind => new Part(kind.Name, kind)).ToList();
        var opened = loaded.Engine.Open(new Situation
        {
            Title = "program",
            Vocabulary = vocabulary,
            Parts = parts,
            PartStatements = [.. parts.Select(part => new PartStatement(part, Truth.Yes, Source.Stated))],
            Jobs = [new JobRequest(vocabulary.Jobs["run"], parts.Single(part => part.Name == "vehicle"))],
        });
        Assert.True(opened.Session is not null, string.Concat(opened.Diagnostics.Select(mistake => mistake.ToSnippet())));
        return opened.Session.Beliefs;
    }

    /// <summary>Steps down from the first ranks (twos weigh more than any number of ones), then twice the likely minutes, then the most; null where there is no way.</summary>
    public (long Ranks, long Twice, long Most)? Best()
    {
        var model = new CpModel();
        var marks = new BoolVar[_choices.Count];
        var done = _times.Select(_ => new List<ILiteral>()).ToArray();
        var ranks = new List<LinearExpr>();
        for (var c = 0; c < _choices.Count; c++)
        {
            var choice = _choices[c];
            var live = All(model, choice.When, marks);
            var taken = choice.Ways.Select((_, w) => model.NewBoolVar($"x{c}.{w}")).ToList();
            model.Add(LinearExpr.Sum(taken) == live);
            var marking = new List<ILiteral>();
            for (var w = 0; w < taken.Count; w++)
            {
                var way = choice.Ways[w];
                model.AddImplication(taken[w], All(model, way.If, marks));
                foreach (var work in way.Work) done[work].Add(taken[w]);
                if (way.Marks) marking.Add(taken[w]);
                var down = way.Rank - choice.Ways.Min(other => other.Rank);
                ranks.Add(taken[w] * (down == 2 ? 7 : down));
            }
            marks[c] = Any(model, marking);
        }
        foreach (var (work, when) in _work) done[work].Add(All(model, when, marks));
        var does = done.Select(sources => Any(model, sources)).ToList();
        foreach (var (work, when) in _forbidden) model.AddBoolOr([does[work].Not(), All(model, when, marks).Not()]);
        var rank = LinearExpr.Sum(ranks);
        var twice = LinearExpr.WeightedSum(does, _times.Select(time => (long)(time.Low + time.High)));
        var most = LinearExpr.WeightedSum(does, _times.Select(time => (long)time.High));
        model.Minimize((rank * 100_000_000L) + (twice * 10_000L) + most);
        var solver = new CpSolver { StringParameters = "num_workers:1" };
        var status = solver.Solve(model);
        if (status == CpSolverStatus.Infeasible) return null;
        Assert.Equal(CpSolverStatus.Optimal, status);
        var best = (long)Math.Round(solver.ObjectiveValue);
        return (best / 100_000_000, best / 10_000 % 10_000, best % 10_000);
    }

    /// <summary>The program as a pack.</summary>
    public string ToPack()
    {
        var text = new StringBuilder("""
            pack: program
            version: 1.0.0
            about: A random program
            places: [bay]
            kinds:
              vehicle: {}
            relations:

            """);
        for (var c = 0; c < _choices.Count; c++) text.Append(CultureInfo.InvariantCulture, $"  marked{c}: {{of: [vehicle, vehicle], text: \"{{a}} is marked\"}}\n");
        text.Append("operations:\n");
        for (var i = 0; i < _times.Length; i++)
            text.Append(CultureInfo.InvariantCulture, $"  work{i}: {{on: vehicle, text: work {i}, place: bay, phase: work, time: {_times[i].Low}..{_times[i].High} min}}\n");
        text.Append("jobs:\n  run: {on: vehicle, text: run}\nrules:\n");
        for (var c = 0; c < _choices.Count; c++)
        {
            Rule(text, $"choice {c}", _choices[c].When);
            text.Append("      - one_of:\n");
            foreach (var (way, w) in _choices[c].Ways.Select((way, w) => (way, w)))
            {
                text.Append(CultureInfo.InvariantCulture, $"          - option: way {w}\n            rank: {way.Rank}\n");
                if (way.If.Length > 0) text.Append(CultureInfo.InvariantCulture, $"            if: {string.Join(" and ", way.If.Select(sign => sign.Text))}\n");
                text.Append("            then:\n");
                foreach (var work in way.Work) text.Append(CultureInfo.InvariantCulture, $"              - do: work{work}(b)\n");
                if (way.Marks) text.Append(CultureInfo.InvariantCulture, $"              - relate: marked{c}(b, b)\n");
                text.Append(CultureInfo.InvariantCulture, $"              - notice: way {w} of {c}\n");
            }
            text.Append("    because: it says so\n    basis: invented\n");
        }
        foreach (var (work, when) in _work)
        {
            Rule(text, $"work {work} on {text.Length}", when);
            text.Append(CultureInfo.InvariantCulture, $"      - do: work{work}(b)\n    because: it says so\n    basis: invented\n");
        }
        foreach (var (work, when) in _forbidden)
        {
            Rule(text, $"not {work} on {text.Length}", when);
            text.Append(CultureInfo.InvariantCulture, $"      - forbid: work{work}(b)\n    because: it says so\n    basis: invented\n");
        }
        return text.ToString();
    }

    private static void Rule(StringBuilder text, string name, Sign[] when)
    {
        var conditions = when.Select(sign => $", \"{sign.Text}\"");
        text.Append(CultureInfo.InvariantCulture, $"  - rule: {name}\n    for: {{b: vehicle}}\n    when: [ job run on b{string.Concat(conditions)} ]\n    then:\n");
    }

    private static Sign[] Signs(Random random, int marks) =>
        marks == 0 ? [] : [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => new Sign(random.Next(marks), random.Next(2) == 0)).DistinctBy(sign => sign.Mark)];

    private static BoolVar All(CpModel model, Sign[] signs, BoolVar[] marks)
    {
        var all = model.NewBoolVar("");
        var literals = signs.Select(sign => sign.IsNot ? marks[sign.Mark].Not() : marks[sign.Mark]).ToList();
        foreach (var literal in literals) model.AddImplication(all, literal);
        model.AddBoolOr([all, .. literals.Select(literal => literal.Not())]);
        return all;
    }

    private static BoolVar Any(CpModel model, List<ILiteral> literals)
    {
        var any = model.NewBoolVar("");
        foreach (var literal in literals) model.AddImplication(literal, any);
        model.AddBoolOr([any.Not(), .. literals]);
        return any;
    }

    private sealed record Choice(Sign[] When, Way[] Ways);

    private sealed record Way(int Rank, Sign[] If, int[] Work, bool Marks);

    private sealed record Sign(int Mark, bool IsNot)
    {
        public string Text => $"{(IsNot ? "not " : "")}marked{Mark}(b, b)";
    }
}
