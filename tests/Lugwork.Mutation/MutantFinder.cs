using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Lugwork.Mutation;

/// <summary>Finds all places of one file: comparisons, sums, logic, numbers, verdicts, conditions, patterns, least and greatest, any and all, statements left out.</summary>
internal static class MutantFinder
{
    private static readonly Dictionary<SyntaxKind, (string Text, string Kind)[]> _operators = new()
    {
        [SyntaxKind.LessThanToken] = [("<=", "edge"), (">=", "turned")],
        [SyntaxKind.LessThanEqualsToken] = [("<", "edge"), (">", "turned")],
        [SyntaxKind.GreaterThanToken] = [(">=", "edge"), ("<=", "turned")],
        [SyntaxKind.GreaterThanEqualsToken] = [(">", "edge"), ("<", "turned")],
        [SyntaxKind.EqualsEqualsToken] = [("!=", "equality")],
        [SyntaxKind.ExclamationEqualsToken] = [("==", "equality")],
        [SyntaxKind.AmpersandAmpersandToken] = [("||", "logic")],
        [SyntaxKind.BarBarToken] = [("&&", "logic")],
        [SyntaxKind.PlusToken] = [("-", "sum")],
        [SyntaxKind.MinusToken] = [("+", "sum")],
        [SyntaxKind.AsteriskToken] = [("/", "product")],
        [SyntaxKind.SlashToken] = [("*", "product")],
        [SyntaxKind.PercentToken] = [("*", "product")],
    };

    private static readonly Dictionary<string, string> _names = new()
    {
        ["Min"] = "Max", ["Max"] = "Min", ["Any"] = "All", ["All"] = "Any", ["First"] = "Last", ["Last"] = "First", ["Floor"] = "Ceiling", ["Ceiling"] = "Floor",
    };

    public static IEnumerable<Place> In(string path, string text)
    {
        SyntaxTree tree = CSharpSyntaxTree.ParseText(text, new CSharpParseOptions(LanguageVersion.Latest), path);
        foreach (SyntaxNode node in tree.GetRoot().DescendantNodes().Where(n => !IsFixed(n)))
        {
            int line = tree.GetLineSpan(node.Span).StartLinePosition.Line;
            foreach ((string instead, string kind) in Of(node))
            {
                yield return new Place(path, node.SpanStart, node.Span.Length, line + 1, tree.GetText().Lines[line].ToString().Trim(), kind, node.ToString(), instead, node is StatementSyntax);
            }
        }
    }

    private static IEnumerable<(string Text, string Kind)> Of(SyntaxNode node)
    {
        switch (node)
        {
            case BinaryExpressionSyntax two when _operators.TryGetValue(two.OperatorToken.Kind(), out (string Text, string Kind)[]? others) && !Declares(node):
                return two.OperatorToken.IsKind(SyntaxKind.PlusToken) && IsText(two) ? [] : others.Select(o => ($"({two.Left} {o.Text} {two.Right})", o.Kind));
            case BinaryExpressionSyntax either when either.IsKind(SyntaxKind.CoalesceExpression) && !Declares(node):
                return [($"({either.Right})", "second taken")];
            case LiteralExpressionSyntax one when one.IsKind(SyntaxKind.NumericLiteralExpression):
                return one.Token.Value is int or long or decimal or double ? [($"({one} + 1)", "number")] : [];
            case LiteralExpressionSyntax yes when yes.IsKind(SyntaxKind.TrueLiteralExpression) && yes.Parent is not (WhileStatementSyntax or ForStatementSyntax):
                return [("false", "yes and no")];
            case LiteralExpressionSyntax no when no.IsKind(SyntaxKind.FalseLiteralExpression):
                return [("true", "yes and no")];
            case MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.Text: "Verdict" } } verdict when verdict.Parent is not BinaryExpressionSyntax:
                return [(verdict.Name.Identifier.Text == "Fits" ? "Verdict.DoesNotFit" : "Verdict.Fits", "verdict")];
            case PrefixUnaryExpressionSyntax not when not.IsKind(SyntaxKind.LogicalNotExpression) && !Declares(node):
                return [($"({not.Operand})", "not left out")];
            case ConditionalExpressionSyntax choice when !Declares(node):
                return [($"({choice.Condition} ? {choice.WhenFalse} : {choice.WhenTrue})", "choice turned")];
            case IsPatternExpressionSyntax such when !Declares(node):
                return [($"!({such})", "is turned"), .. Edges(such, such.Pattern)];
            case SwitchExpressionSyntax choices when !Declares(choices.GoverningExpression):
                return choices.Arms.SelectMany(a => Edges(choices, a.Pattern));
            case InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax called } call when _names.TryGetValue(called.Name.Identifier.Text, out string? other) && called.Name is IdentifierNameSyntax && !Declares(node):
                return [($"{called.Expression}.{other}{call.ArgumentList}", "name")];
            case ExpressionStatementSyntax { Expression: InvocationExpressionSyntax or AssignmentExpressionSyntax or PostfixUnaryExpressionSyntax or PrefixUnaryExpressionSyntax } when !Declares(node):
                return [("", "statement left out")];
            case ContinueStatementSyntax:
            case BreakStatementSyntax when node.Ancestors().First(n => n is SwitchStatementSyntax or ForStatementSyntax or CommonForEachStatementSyntax or WhileStatementSyntax or DoStatementSyntax) is not SwitchStatementSyntax:
                return [("", "jump left out")];
            default:
                return [];
        }
    }

    /// <summary>The whole expression again for each limit in a pattern, with the limit itself in or out.</summary>
    private static IEnumerable<(string Text, string Kind)> Edges(SyntaxNode whole, PatternSyntax pattern)
    {
        foreach (RelationalPatternSyntax limit in pattern.DescendantNodesAndSelf().OfType<RelationalPatternSyntax>())
        {
            int at = limit.OperatorToken.SpanStart - whole.SpanStart;
            string text = whole.ToString();
            yield return ($"({text[..at]}{_operators[limit.OperatorToken.Kind()][0].Text}{text[(at + limit.OperatorToken.Span.Length)..]})", "edge");
        }
    }

    /// <summary>A sum of words is no sum.</summary>
    private static bool IsText(BinaryExpressionSyntax two) => two.DescendantNodes().Any(n => n is InterpolatedStringExpressionSyntax || n.IsKind(SyntaxKind.StringLiteralExpression));

    /// <summary>What names a variable can stand in the text once only.</summary>
    private static bool Declares(SyntaxNode node) => node.DescendantNodesAndSelf().Any(n => n is SingleVariableDesignationSyntax or AwaitExpressionSyntax);

    /// <summary>Where a constant is asked for, or a pattern, or nothing is computed.</summary>
    private static bool IsFixed(SyntaxNode node) => node.AncestorsAndSelf().Any(n =>
        n is AttributeSyntax or EnumMemberDeclarationSyntax or PatternSyntax or CaseSwitchLabelSyntax or GotoStatementSyntax
            || (n is ParameterSyntax { Default: not null } && n != node)
            || (n is FieldDeclarationSyntax field && field.Modifiers.Any(SyntaxKind.ConstKeyword))
            || (n is LocalDeclarationStatementSyntax local && local.IsConst));
}
