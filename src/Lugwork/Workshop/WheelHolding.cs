using Lugwork.Hubs;

namespace Lugwork;

/// <summary>How a wheel is held in its ends, by its hub, axle and nuts; where that is not known, it has to be found out.</summary>
internal static class WheelHolding
{
    public static string?[] Does(Build build, WheelEnd end)
    {
        HubAttachment? held = build.HeldBy(end);
        return held is null ? ["Find out first what holds this hub: a skewer, nuts, bolts or a thru-axle.", "Set the wheel fully into its ends, and tighten it as its maker says."]
            : held == HubAttachment.ThruAxle ? ["Grease the axle.", "Lift the wheel in, start the axle by hand, and tighten it to the figure printed on it."]
            : held == HubAttachment.Nuts ? ["Set the wheel straight in the slots, with the washers that hold the axle.", "Tighten both nuts in turn."]
            : held == HubAttachment.QuickRelease ? [
                !end.IsFront && build.Frame.RearDropout.MayBe(DropoutSlot.Horizontal) ? "Set the wheel into its ends, straight between the stays; slots that run level have no stop." : "Set the wheel fully into its ends.",
                "Set the nut so that the lever begins to grip half-way.",
                "Close the lever with firm pressure of the palm, along blade or stay, where nothing catches it.",
            ]
            : ["Set the wheel fully into its ends.", $"Tighten it as the hub maker says: {held.TradeName}."];
    }

    /// <summary>The rear wheel moves in its slots until the chain or belt is set; only then is it tightened.</summary>
    public static bool WaitsForChain(Build build, WheelEnd end) =>
        !end.IsFront && build.HasFixedChain() == true && build.WheelTensions() != false && build.HeldBy(end) != HubAttachment.ThruAxle;

    public static WorkTool? Tool(Build build, WheelEnd end) => build.HeldBy(end) is not { } held ? null : held == HubAttachment.Nuts ? KeySizes.AxleNuts : held == HubAttachment.ThruAxle ? KeySizes.ThruAxle : null;

    public static bool Greases(Build build, WheelEnd end) => build.HeldBy(end) == HubAttachment.ThruAxle;

    public static TorqueFigure? Torque(Build build, WheelEnd end)
    {
        HubAttachment? held = build.HeldBy(end);
        return held == HubAttachment.ThruAxle ? end.IsFront ? TorqueTable.BrakeTorques.FrontThruAxle : TorqueTable.BrakeTorques.RearThruAxle
            : held == HubAttachment.Nuts ? end.IsFront || build.HasHubGear() != true ? null : TorqueTable.BrakeTorques.AxleNut
            : held == HubAttachment.QuickRelease ? TorqueTable.BrakeTorques.Skewer : null;
    }

    public static WorkFigure? Lacks(Build build, WheelEnd end) =>
        Torque(build, end) is not null ? null : WorkFigure.LacksTorque("axle-torque", "how tight the wheel is held", build.HeldBy(end) is null ? "what holds the hub" : !end.IsFront && build.HasHubGear() is null ? "whether the hub has gears, and the hub maker's figure" : "the hub maker's figure");
}
