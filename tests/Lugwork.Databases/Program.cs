using Lugwork.Databases;
using Xunit.MicrosoftTestingPlatform;

// Beside the tests: what they start as processes of their own.
return args switch
{
    ["candidates-in-parquet", var folder, .. var slots] => ParquetPart.Run(folder, slots),
    ["bytes-held"] => MemoryPart.Run(),
    ["save-until-killed", var path, var drawn] => SnapshotWriter.Run(path, drawn),
    _ => await TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions),
};
