#region steps
using Lugwork.Workshop;
using Lugwork;
#endregion

namespace Answers;

/// <summary>How do I plan the work?</summary>
internal static class WorkInOrder
{
    private static Build Bike => Build.From(Frame.Read("kind road; material steel; head tube EC34/EC34; shell BSA 68; seat tube 27.2; least insertion 80; most insertion 250"), "Steel road frame")
        .With(Fork.Read("steerer 28.6; threadless; crown seat 30; steerer material steel; travel none"))
        .With(Headset.Read("upper cup EC34; lower cup EC34; kind threadless; steerer 28.6; crown race 30"))
        .With(Stem.Read("fixing clamp-28.6; bar 31.8"))
        .With(Seatpost.Read("27.2 x 350; mark 75; insertion 110; material aluminium"));

    public static void Steps()
    {
        #region steps

        Build build = Build.From(Frame.Read("kind road; material steel; head tube EC34/EC34; shell BSA 68; seat tube 27.2; least insertion 80; most insertion 250"), "Steel road frame")
            .With(Fork.Read("steerer 28.6; threadless; crown seat 30; steerer material steel; travel none"))
            .With(Headset.Read("upper cup EC34; lower cup EC34; kind threadless; steerer 28.6; crown race 30"))
            .With(Stem.Read("fixing clamp-28.6; bar 31.8"))
            .With(Seatpost.Read("27.2 x 350; mark 75; insertion 110; material aluminium"));

        WorkPlan plan = build.WorkPlan();
        foreach (WorkStep step in plan.Steps)
        {
            Console.WriteLine($"{step.Id}: {step.Title}{(step.Shop is null ? "" : " (leave it to a shop)")}");
        }
        #endregion
    }

    public static void OneStep()
    {
        WorkPlan plan = Bike.WorkPlan();
        #region step
        WorkStep step = plan.Find("fit-stem")!;
        foreach (string line in step.Does.Concat(step.Checks))
        {
            Console.WriteLine(line);
        }

        foreach (TorqueFigure torque in step.Torques)
        {
            Console.WriteLine(torque);
        }
        #endregion
    }

    public static void WhyFirst()
    {
        WorkPlan plan = Bike.WorkPlan();
        #region why
        foreach (WorkLink link in plan.WhyBefore("press-headset", "cut-steerer"))
        {
            Console.WriteLine(link);
        }
        #endregion
    }
}
