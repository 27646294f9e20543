using System.Text.Json;
using Lugwork.Workshop;
using Lugwork;
using Lugwork.AotProbe;
using Lugwork.Seating;

// A check with its reasons, a needs sheet, a headset code, the reference page, a build file there and back and its schema, and a work plan with its record, natively.
Build build = Build.From(Frame.Read("rear 12x142; material steel; seat tube 27.2; rear brake IS"))
    .With(Wheel.Read("rear 12x142; HG-M; six-bolt"), Slot.RearWheel)
    .With(Seatpost.Read("26.8 x 350"));
Build back = BuildFile.Read(BuildFile.Write(build));
FitReport report = back.Check();

WorkPlan plan = back.WorkPlan();
WorkRecord record = WorkRecordFile.Read(WorkRecordFile.Write(WorkRecord.For(plan).WithDone("inspect-parts")), plan);

// A rigid frame with disc mounts, as far as it is said, takes neither a shock nor rim brakes.
Slot[] notAsked = [Slot.Frame, Slot.FrontRimBrake, Slot.RearRimBrake, Slot.Shock];
bool good = report.Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube").Verdict == Verdict.NeedsPart
    && report.Findings.Single(f => f.Joint!.Id == "rear-wheel-in-frame").Verdict == Verdict.Fits
    && back.Needs().Select(n => n.Slot).SequenceEqual(Slot.All.Where(s => !s.IsOptional && !notAsked.Contains(s)))
    && Slot.All.All(s => BuildFile.Schema.Contains($"\"{s.Key}\": {{", StringComparison.Ordinal))
    && report.ToJson().Contains("seatpost-in-seat-tube", StringComparison.Ordinal)
    && report.Findings.All(f => f.Explain().Contains("Weakest leg: ", StringComparison.Ordinal))
    && StandardsPage.Write().Contains("`Lugwork.Hubs.HubStandard`", StringComparison.Ordinal)
    && Lugwork.Steering.HeadsetPair.Parse("zs44/28.6 - ec44/40").ToString() == "ZS44/28.6|EC44/40"
    && plan.ToHtml().Contains("<h1>Work plan", StringComparison.Ordinal) && plan.ToJson().Contains("\"fit-seatpost\"", StringComparison.Ordinal) && record.IsDone("inspect-parts")
    && JsonSerializer.Serialize(new Bound(SeatpostDiameter.OfMillimetres(27.2m)), BoundJson.Default.Bound) == """{"Post":"27.2"}"""
    && JsonSerializer.Deserialize("""{"Post":"27,2 mm"}""", BoundJson.Default.Bound)!.Post.Millimetres == 27.2m
    && new InterfaceTypeConverter<SeatpostDiameter>().ConvertFromString("27.2") is SeatpostDiameter { Millimetres: 27.2m }
    && PartText.Write(Slot.Seatpost, PartText.Read(Slot.Seatpost, "27.2 x 350")) == "diameter 27.2; length 350"
    && Math.Abs(Lugwork.Seating.SeatpostDiameter.OfMillimetres(27.2m).Diameter.Millimeters - 27.2) < 1e-9;
Console.WriteLine(good ? "native check passed" : "native check FAILED");
return good ? 0 : 1;
