using System.Collections;
using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using FsCheck;
using FsCheck.Xunit;
using Microsoft.FSharp.Core;
using Xunit;
using Xunit.Sdk;

namespace Lugwork.Mutation;

/// <summary>Runs one test in this process: a fact, all rows of a theory, or a law with cases that are the same each time.</summary>
internal static class TestRun
{
    private const BindingFlags Anywhere = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.FlattenHierarchy;

    public static IEnumerable<MethodInfo> Of(Type type) =>
        type.GetMethods().Where(m => m.GetCustomAttribute<FactAttribute>() is { Skip: null }).OrderBy(m => m.Name, StringComparer.Ordinal);

    /// <summary>Throws what the test throws. Of a theory so many rows are run, or as many as take so long.</summary>
    /// <returns>The row to go on with; -1 where there is none.</returns>
    public static int Run(MethodInfo method, int cases, int from = 0, int to = int.MaxValue, long milliseconds = long.MaxValue)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        object? self = method.IsStatic ? null : Activator.CreateInstance(method.ReflectedType!);
        if (method.GetCustomAttribute<PropertyAttribute>() is { } law)
        {
            Config config = Config.QuickThrowOnFailure.WithMaxTest(Math.Min(law.MaxTest, cases)).WithQuietOnSuccess(true).WithArbitrary(law.Arbitrary ?? [])
                .WithReplay(FSharpOption<Replay>.Some(new Replay(new Rnd(20, 27), FSharpOption<int>.None)));
            Check.Method(config, method, self is null ? FSharpOption<object>.None : FSharpOption<object>.Some(self));
            return -1;
        }

        long start = Stopwatch.GetTimestamp();
        int at = -1;
        foreach (object?[] row in Rows(method))
        {
            if (++at < from)
            {
                continue;
            }

            if (at >= to || (at > from && Stopwatch.GetElapsedTime(start).TotalMilliseconds >= milliseconds))
            {
                return at;
            }

            object? said = method.Invoke(self, BindingFlags.DoNotWrapExceptions, null, method.ResolveMethodArguments(row), null);
            if (said is Task task)
            {
                task.GetAwaiter().GetResult();
            }
        }

        return -1;
    }

    private static IEnumerable<object?[]> Rows(MethodInfo method)
    {
        if (method.GetCustomAttribute<TheoryAttribute>() is null)
        {
            return [[]];
        }

        return method.GetCustomAttributes<InlineDataAttribute>().Select(i => i.Data)
            .Concat(method.GetCustomAttributes<MemberDataAttribute>().SelectMany(m => Rows(m.MemberType ?? method.ReflectedType!, m.MemberName, m.Arguments)));
    }

    private static IEnumerable<object?[]> Rows(Type type, string member, object?[] arguments)
    {
        object? rows = type.GetProperty(member, Anywhere)?.GetValue(null)
            ?? type.GetField(member, Anywhere)?.GetValue(null)
            ?? type.GetMethod(member, Anywhere)!.Invoke(null, BindingFlags.DoNotWrapExceptions, null, arguments, null);
        foreach (object? row in (IEnumerable)rows!)
        {
            yield return row switch
            {
                object?[] values => values,
                ITheoryDataRow values => values.GetData(),
                _ => [row],
            };
        }
    }
}
