using System.Reflection;
using System.Runtime.Loader;
using System.Text;

namespace Lugwork.Tests.Hostile;

/// <summary>What is listed and laid out when it is first asked for says the same when many threads ask at once.</summary>
public sealed class FirstJudgingTests
{
    private const int Threads = 8;

    [Fact]
    public void Threads_that_judge_at_once_while_every_table_is_still_to_be_made_say_what_one_thread_says()
    {
        string alone = FirstJudging.Say(0);
        Assert.True(alone.Split(Enum.GetNames<Verdict>(), StringSplitOptions.None).Length > 1_000, "too little is judged");
        for (int turn = 0; turn < 3; turn++)
        {
            Assert.All(InFreshLibrary(), said => Assert.Equal(alone, said));
        }
    }

    /// <summary>What each thread says in another copy of the library, of which nothing has run.</summary>
    private static string[] InFreshLibrary()
    {
        FreshLibrary fresh = new();
        try
        {
            Assembly tests = fresh.LoadFromAssemblyPath(typeof(FirstJudging).Assembly.Location);
            MethodInfo method = tests.GetType(typeof(FirstJudging).FullName!)!.GetMethod(nameof(FirstJudging.SayAtOnce), BindingFlags.Public | BindingFlags.Static)!;
            Assert.NotSame(typeof(FirstJudging), method.DeclaringType);
            return (string[])method.Invoke(null, [Threads])!;
        }
        finally
        {
            fresh.Unload();
        }
    }

    private sealed class FreshLibrary() : AssemblyLoadContext("fresh library", isCollectible: true)
    {
        protected override Assembly? Load(AssemblyName assemblyName) =>
            assemblyName.Name == typeof(Build).Assembly.GetName().Name ? LoadFromAssemblyPath(typeof(Build).Assembly.Location) : null;
    }
}

/// <summary>Bicycles from seeds, put together and judged.</summary>
internal static class FirstJudging
{
    private const int Bicycles = 30;

    /// <summary>Each thread begins with another bicycle, so that different joints are the first.</summary>
    public static string[] SayAtOnce(int threads)
    {
        string[] said = new string[threads];
        using Barrier start = new(threads);
        Thread[] running = new Thread[threads];
        for (int i = 0; i < threads; i++)
        {
            int own = i;
            running[i] = new Thread(() =>
            {
                start.SignalAndWait();
                said[own] = Say(own * Bicycles / threads);
            });
            running[i].Start();
        }

        foreach (Thread thread in running)
        {
            thread.Join();
        }

        return said;
    }

    /// <summary>The verdicts of all bicycles, in order of their seeds, whichever is judged first.</summary>
    public static string Say(int first)
    {
        string[] said = new string[Bicycles];
        for (int i = 0; i < Bicycles; i++)
        {
            int seed = (first + i) % Bicycles;
            said[seed] = Judged(Builds.Bicycles.Any(new Random(seed)));
        }

        return string.Join('\n', said);
    }

    private static string Judged(Build build)
    {
        Fit[] fits = new Fit[JointTable.All.Length];
        StringBuilder text = new();
        foreach (Fit fit in fits.AsSpan(0, build.Judge(fits)))
        {
            text.Append(fit.Joint!.Id).Append(' ').Append(fit.Verdict).Append(';');
        }

        return text.ToString();
    }
}
