using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Lugwork.Mutation;

/// <summary>Which changes are no code: the compiler says where, the switch there says which.</summary>
internal static partial class Blame
{
    /// <summary>What the compiler says where a variable is not set on every way, or a way ends nowhere.</summary>
    private static readonly string[] _ofFlow = ["CS0161", "CS0163", "CS0165", "CS0170", "CS0171", "CS0177", "CS0188", "CS8070"];

    public static HashSet<int> Of(string folder, string said)
    {
        HashSet<int> wrong = [];
        foreach (IGrouping<string, Match> file in Errors().Matches(said).GroupBy(m => m.Groups["file"].Value))
        {
            string text = File.ReadAllText(Path.Combine(folder, file.Key));
            SourceText lines = SourceText.From(text);
            SyntaxNode root = CSharpSyntaxTree.ParseText(lines, new CSharpParseOptions(LanguageVersion.Latest)).GetRoot();
            foreach (Match error in file)
            {
                int line = int.Parse(error.Groups["line"].Value, CultureInfo.InvariantCulture) - 1;
                int at = lines.Lines[line].Start + int.Parse(error.Groups["column"].Value, CultureInfo.InvariantCulture) - 1;
                wrong.UnionWith(_ofFlow.Contains(error.Groups["code"].Value) ? LeftOut(root, at) : At(root, at) is { } one ? [one] : Near(root, at, lines.Lines[line].ToString()));
            }
        }

        return wrong;
    }

    /// <summary>The innermost switch in whose changed part the error is, or at whose beginning.</summary>
    private static int? At(SyntaxNode root, int at)
    {
        foreach (SyntaxNode node in root.FindToken(at).Parent!.AncestorsAndSelf())
        {
            if (node is ConditionalExpressionSyntax choice && Number(choice.Condition) is { } number && (choice.WhenTrue.Span.Contains(at) || at <= choice.Condition.SpanStart))
            {
                return number;
            }
        }

        return null;
    }

    /// <summary>Every switch of the smallest expression or statement around that has one, or of the line.</summary>
    private static IEnumerable<int> Near(SyntaxNode root, int at, string line)
    {
        foreach (SyntaxNode node in root.FindToken(at).Parent!.AncestorsAndSelf())
        {
            int[] inside = [.. node.DescendantNodesAndSelf().OfType<InvocationExpressionSyntax>().Select(Number).OfType<int>()];
            if (inside.Length > 0)
            {
                return inside;
            }
        }

        return Switches().Matches(line).Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture));
    }

    /// <summary>Every statement left out in the member around.</summary>
    private static IEnumerable<int> LeftOut(SyntaxNode root, int at) =>
        root.FindToken(at).Parent!.AncestorsAndSelf().OfType<MemberDeclarationSyntax>().First().DescendantNodes().OfType<IfStatementSyntax>()
            .Select(i => i.Condition is PrefixUnaryExpressionSyntax not ? Number(not.Operand) : null).OfType<int>();

    private static int? Number(ExpressionSyntax switched) =>
        switched is InvocationExpressionSyntax call && call.Expression.ToString() == "global::Lugwork.Mutant.Is" ? int.Parse(call.ArgumentList.Arguments[0].ToString(), CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"(?<file>src/Lugwork/[^\s(:]+\.cs)\((?<line>\d+),(?<column>\d+)\): error (?<code>CS\d+)")]
    private static partial Regex Errors();

    [GeneratedRegex(@"Mutant\.Is\((\d+)\)")]
    private static partial Regex Switches();
}
