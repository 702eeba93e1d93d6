using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Language.Compiling;
using ProcedureRules.Language.Nodes;
using ProcedureRules.Language.Syntax;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;
using Xunit;

namespace ProcedureRules.Tests.Language;

/// <summary>Learning a fact never turns a yes into a no, nor widens a value: what a plan calls sure rests on this.</summary>
public class MonotonyTests
{
    private static readonly PackSet Packs = PackReader.Read([new SourceFile("shop.yaml", GivenLanguage.Shop)], new DiagnosticBag());

    private static readonly string[] Lengths = ["oil_pan.drop", "oil_pan.needed", "oil_pan.gap"];

    private static readonly string[] Words = ["fan_shroud.pieces", "fan_shroud.spare"];

    private static readonly string[] YesNos = ["oil_pan.dented", "fan_shroud.fixed"];

    [Property(MaxTest = 3000)]
    public Property Condition_WhenFactsNarrow_NeverFlips() => Prop.ForAll(Case(Condition(3)).ToArbitrary(), given =>
    {
        var (node, binding) = Check(given.Text, (checker, expression) => checker.Truth(expression));
        var (before, after) = (node.Evaluate(given.Wide, binding), node.Evaluate(given.Narrow, binding));
        return (before == Truth.Unknown || before == after).Label($"{given.Text}: {before} became {after}");
    });

    [Property(MaxTest = 3000)]
    public Property Length_WhenFactsNarrow_NeverWidens() => Prop.ForAll(Case(Length(3)).ToArbitrary(), given =>
    {
        var (node, binding) = Check(given.Text, (checker, expression) => checker.Quantity(expression));
        var (before, after) = (node.Evaluate(given.Wide, binding), node.Evaluate(given.Narrow, binding));
        return before.Contains(after).Label($"{given.Text}: {before} became {after}");
    });

    private static (T Node, Binding Binding) Check<T>(string text, Func<ExpressionChecker, Expression, T?> check)
        where T : Node
    {
        var bag = new DiagnosticBag();
        var (snippet, scope) = (new Snippet(text), new RuleScope("shop"));
        var expression = Parser.Expression(snippet, bag);
        var node = expression is null ? null : check(new(new(new(Packs, FunctionRegistry.Standard, bag), scope, snippet)), expression);
        Assert.True(node is not null, $"{text}\n{bag.ToLines()}");
        return (node, new([.. scope.Variables.Select(variable => (object)new Part(variable.Name, variable.Kind!))]));
    }

    private static Gen<string> Length(int depth)
    {
        var leaf = Gen.OneOf(Gen.Elements(Lengths), Gen.Choose(0, 12).Select(figure => $"{figure} in"), Gen.Elements("1..3 in", "0.5 in", "about 4 in"));
        if (depth == 0) return leaf;
        var lower = Length(depth - 1);
        return Gen.OneOf(
            leaf,
            from op in Gen.Elements('+', '-') from a in lower from b in lower select $"({a} {op} {b})",
            from function in Gen.Elements("min", "max") from a in lower from b in lower select $"{function}({a}, {b})",
            lower.Select(a => $"abs({a})"),
            from c in Condition(depth - 1) from a in lower from b in lower select $"if({c}, {a}, {b})",
            from a in lower from factor in Gen.Choose(-2, 3) select $"{factor} * {a}");
    }

    private static Gen<string> Condition(int depth)
    {
        var leaf = Gen.OneOf(
            from op in Gen.Elements("<", "<=", ">", ">=", "is", "is not") from a in Length(0) from b in Length(0) select $"{a} {op} {b}",
            from path in Gen.Elements(Words) from right in Gen.Elements("one_piece", "[one_piece, none]", "fan_shroud.spare") select $"{path} is {right}",
            Gen.Elements(YesNos),
            Gen.Elements("covers(dust_cover, oil_pan)", "any(oil_cooler)"));
        if (depth == 0) return leaf;
        var lower = Condition(depth - 1);
        return Gen.OneOf(
            from op in Gen.Elements("<", "<=", ">", ">=", "is", "is not") from a in Length(depth - 1) from b in Length(depth - 1) select $"{a} {op} {b}",
            from op in Gen.Elements("and", "or") from a in lower from b in lower select $"({a} {op} {b})",
            lower.Select(a => $"(not {a})"),
            from c in lower from a in lower from b in lower select $"if({c}, {a}, {b})");
    }

    private static Gen<(string Text, SupposedBeliefs Wide, SupposedBeliefs Narrow)> Case(Gen<string> text) =>
        from expression in text
        from ends in Gen.Choose(0, 12).ListOf(Lengths.Length * 4)
        from words in Gen.Choose(1, 7).ListOf(Words.Length * 2)
        from answers in Gen.Choose(1, 3).ListOf(YesNos.Length * 2)
        from truths in Gen.Elements(Truth.No, Truth.Unknown, Truth.Yes).ListOf(4)
        select (expression, Suppose(ends, words, answers, truths, isNarrow: false), Suppose(ends, words, answers, truths, isNarrow: true));

    // The narrow beliefs keep of each wide value a part that is never empty.
    private static SupposedBeliefs Suppose(IList<int> ends, IList<int> words, IList<int> answers, IList<Truth> truths, bool isNarrow)
    {
        var beliefs = new SupposedBeliefs();
        for (var i = 0; i < Lengths.Length; i++)
        {
            var sorted = ends.Skip(i * 4).Take(4).Order().ToArray();
            var fact = FactOf(Lengths[i]);
            var (low, high) = isNarrow ? (sorted[1], sorted[2]) : (sorted[0], sorted[3]);
            beliefs.Values[Key(Lengths[i])] = Value.Of(fact.Type, Quantity.Between(low * 0.0254, high * 0.0254, Dimension.Length));
        }

        Narrow(Words, words);
        Narrow(YesNos, answers);
        beliefs.Relations[("covers", "dust_cover", "oil_pan")] = !isNarrow || truths[0] != Truth.Unknown ? truths[0] : truths[1];
        beliefs.Parts["oil_cooler"] = !isNarrow || truths[2] != Truth.Unknown ? truths[2] : truths[3];
        return beliefs;

        void Narrow(string[] paths, IList<int> bits)
        {
            for (var i = 0; i < paths.Length; i++)
            {
                var (wide, kept) = (bits[i * 2], bits[i * 2] & bits[(i * 2) + 1]);
                beliefs.Values[Key(paths[i])] = Value.OfWords(FactOf(paths[i]).Type, (ulong)(isNarrow && kept != 0 ? kept : wide));
            }
        }
    }

    private static FactDefinition FactOf(string path) => Packs.Vocabulary.FactOf(Packs.Vocabulary.Kinds[Key(path).Item1], Key(path).Item2)!;

    private static (string, string) Key(string path) => (path.Split('.')[0], path.Split('.')[1]);
}
