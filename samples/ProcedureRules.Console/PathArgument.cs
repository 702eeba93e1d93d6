using System.CommandLine;

namespace ProcedureRules.ConsoleHost;

/// <summary>Arguments that are paths: what starts with a dash is a misspelt option, not a file.</summary>
internal static class PathArgument
{
    public static Argument<string?> Optional(string name, string description) => Guard(new Argument<string?>(name) { Description = description, Arity = ArgumentArity.ZeroOrOne });

    public static Argument<string> Required(string name, string description) => Guard(new Argument<string>(name) { Description = description });

    private static Argument<T> Guard<T>(Argument<T> argument)
    {
        argument.Validators.Add(result =>
        {
            if (result.Tokens.FirstOrDefault(token => token.Value.StartsWith('-')) is { } option)
                result.AddError($"there is no option '{option.Value}'; --help lists them");
        });
        return argument;
    }
}
