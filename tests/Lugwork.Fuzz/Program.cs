using System.Runtime.CompilerServices;
using Lugwork.Fuzz;

// The library is changed before anything of it is loaded: nothing in this file may name it.
return FuzzArguments.Parse(args) is { } arguments ? Start(arguments) : FuzzArguments.Usage();

[MethodImpl(MethodImplOptions.NoInlining)]
static int Start(FuzzArguments arguments)
{
    if (arguments.Replay is null)
    {
        CountedLibrary.Make();
    }

    return FuzzRun.Of(arguments);
}
