namespace ProcedureRules.Language.Syntax;

/// <summary>How operators are written and how tightly they bind; parser and printer share it.</summary>
internal static class Operators
{
    public const int LoosestLevel = 0;
    public const int NotLevel = 2;
    public const int ComparisonLevel = 3;
    public const int SumLevel = 4;
    public const int ProductLevel = 5;
    public const int UnaryLevel = 6;
    public const int PrimaryLevel = 7;

    private static readonly (string Text, int Level)[] Rows =
    [
        ("or", 0), ("and", 1),
        ("<", ComparisonLevel), ("<=", ComparisonLevel), (">", ComparisonLevel), (">=", ComparisonLevel),
        ("+", SumLevel), ("-", SumLevel), ("*", ProductLevel), ("/", ProductLevel),
    ];

    /// <summary>Words of the language that cannot name a variable.</summary>
    public static readonly IReadOnlyList<string> Keywords = ["or", "and", "not", "is", "is_not", "yes", "no", "job"];

    public static string Text(BinaryOperator op) => Rows[(int)op].Text;

    public static int Level(BinaryOperator op) => Rows[(int)op].Level;

    public static BinaryOperator? Find(string text, int level)
    {
        for (var i = 0; i < Rows.Length; i++)
            if (Rows[i].Level == level && Rows[i].Text == text) return (BinaryOperator)i;
        return null;
    }

    public static bool IsComparison(BinaryOperator op) => Level(op) == ComparisonLevel;

    /// <summary>What a writer used to another language means by an operator of that language.</summary>
    public static string? Ours(string foreign) => foreign switch
    {
        "=" or "==" or "===" => "is",
        "!=" or "<>" or "≠" => "is not",
        "&&" or "&" => "and",
        "||" or "|" => "or",
        "!" => "not",
        "≤" or "=<" => "<=",
        "≥" or "=>" => ">=",
        "×" or "·" => "*",
        "÷" or ":" => "/",
        "−" or "–" => "-",
        _ => null,
    };
}
