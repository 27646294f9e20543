using System.Globalization;
using Lugwork.Benchmarks;
using Lugwork.Benchmarks.Bulk;
using Lugwork.Benchmarks.Drawing;
using Lugwork.Benchmarks.Judging;
using Lugwork.Benchmarks.Planning;
using Lugwork.Benchmarks.Processes;
using Lugwork.Benchmarks.Reading;
using Lugwork.Benchmarks.Screening;

// The probes come first: they must not touch anything that they are not to measure.
switch (args)
{
    case ["probe-check"]:
        return CheckProbe.Run();
    case ["probe-units"]:
        return UnitsProbe.Run();
}

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (!Options.TryRead(args, out Options options))
{
    Console.Error.WriteLine(Options.Usage);
    return 2;
}

// Every row of the table. A row of its own type goes here.
IRow[] rows =
[
    new ReadingRow<AxleReading>("axle"),
    new ReadingRow<HeadsetReading>("headset pair"),
    new ReadingRow<TyreReading>("tyre size"),
    new JudgingRow(),
    new ScanRow(),
    new OneFrameRow(),
    new LoadRow(),
    new AllFramesRow(),
    new IndexSizeRow(),
    new FirstCheckRow(),
    new NativeProcessRow(),
    new PackageRow(),
    new ChoosingRow(systemChecks: false),
    new ChoosingRow(systemChecks: true),
    new TenRow(),
    new CappedRow(),
    new GrowthRow(),
    new BulkRow(),
    new DrawingRow(),
];
return Table.Run(rows, options) ? 0 : 1;
