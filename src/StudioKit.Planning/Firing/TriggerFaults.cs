using StudioKit.Kits.SetUps;
using StudioKit.Kits.Triggers;
using UnitsNet;

namespace StudioKit.Planning.Firing;

/// <summary>What stands in the way of the flashes of one set-up being fired as the kit has it.</summary>
internal sealed class TriggerFaults
{
    // A cord runs round legs and frame and hangs (common practice, no source).
    private const double CordSlack = 1.2;

    // Find the button, press it (common practice, no source).
    private const double LeastByHand = 1;

    private readonly Plan _plan;
    private readonly SetUpSpec _setUp;
    private readonly IReadOnlyList<ExposurePlan> _exposures;
    private readonly IReadOnlyList<LightPlan> _lights;
    private readonly FlashWays _ways;

    /// <param name="plan">The plan.</param>
    /// <param name="setUp">The set-up.</param>
    public TriggerFaults(Plan plan, SetUpSpec setUp)
    {
        (_plan, _setUp, _ways) = (plan, setUp, new FlashWays(plan, setUp));
        _exposures = [.. plan.Exposures.Where(exposure => exposure.SetUp == setUp.Name)];
        _lights = _exposures.Count == 0 ? [] : [.. _exposures[0].Lights.OrderBy(light => light.Place)];
    }

    /// <summary>Flashes at work.</summary>
    public IReadOnlyList<LightPlan> Lights => _lights;

    /// <summary>The first thing that is wrong with each flash.</summary>
    public IEnumerable<TriggerFault> All() => _lights.Select(light => Of(light).FirstOrDefault()).OfType<TriggerFault>();

    private IEnumerable<TriggerFault> Of(LightPlan light)
    {
        if (light.FiredBy is not { } firing || TriggerOf(light) is not { } trigger)
        {
            return [Fault(light, TriggerFaultKind.NotFired)];
        }

        return trigger.Kind == TriggerKind.RadioSender
            ? [Fault(light, TriggerFaultKind.SenderAtFlash)]
            : Common(light, trigger).Concat(trigger.Kind switch
            {
                TriggerKind.RadioReceiver => ByRadio(light, firing, trigger),
                TriggerKind.OpticalCell => BySight(light, trigger),
                TriggerKind.Hand => ByHand(light),
                _ => ByCord(light, trigger),
            });
    }

    private IEnumerable<TriggerFault> Common(LightPlan light, TriggerSpec trigger)
    {
        if (trigger.BuiltInto is { } flash && flash != light.Flash)
        {
            yield return Fault(light, TriggerFaultKind.InOtherFlash) with { Other = flash };
        }

        var before = _lights.Count(other => other.FiredBy?.Trigger == trigger.Name && other.Place < light.Place);
        if (trigger.Kind != TriggerKind.Hand && before >= trigger.Count)
        {
            yield return Fault(light, TriggerFaultKind.UsedTwice) with { Counts = (trigger.Count, _lights.Count(other => other.FiredBy?.Trigger == trigger.Name)) };
        }
    }

    private IEnumerable<TriggerFault> ByRadio(LightPlan light, FiringPlan firing, TriggerSpec trigger)
    {
        if (_plan.Kit.SenderOf(_setUp) is not { Kind: TriggerKind.RadioSender } sender)
        {
            yield return Fault(light, TriggerFaultKind.NoSender) with { Other = firing.Sender };
            yield break;
        }

        if (firing.Channel is { } its && sender.Channel is { } senders && its != senders)
        {
            yield return Fault(light, TriggerFaultKind.OtherChannel) with { Other = sender.Name, Channels = (its, senders) };
        }

        if (TriggerGroup.Place(_setUp.Lights[light.Place].Group) is { } group && group >= Math.Min(sender.Groups, trigger.Groups))
        {
            yield return Fault(light, TriggerFaultKind.UnknownGroup) with { Other = sender.Groups <= trigger.Groups ? sender.Name : trigger.Name, Group = TriggerGroup.Letter(group) };
        }

        if (sender.SetsPower && _lights.FirstOrDefault(other => other.Place < light.Place && SharesGroup(light, other) && DiffersInPower(light, other)) is { } sharing)
        {
            yield return Fault(light, TriggerFaultKind.SharesGroup) with { Other = sharing.Flash, Group = _setUp.Lights[light.Place].Group };
        }

        var reach = UnitMath.Min(sender.Reach, trigger.Reach);
        if (_ways.FromCamera(light) is var way && way > reach)
        {
            yield return Fault(light, TriggerFaultKind.OutOfRange) with { Range = (way, reach) };
        }
    }

    private IEnumerable<TriggerFault> ByCord(LightPlan light, TriggerSpec trigger)
    {
        // The radio comes first: other flashes hang on it.
        var onShoe = _lights.Any(other => other.FiredBy?.Kind == TriggerKind.RadioReceiver) ? _plan.Kit.SenderOf(_setUp)?.Name
            : _lights.FirstOrDefault(other => other.FiredBy?.Kind == TriggerKind.Cord && other.Place < light.Place)?.FiredBy?.Trigger;
        if (onShoe is not null)
        {
            yield return Fault(light, TriggerFaultKind.ShoeTaken) with { Other = onShoe };
        }

        if (_ways.FromCamera(light) * CordSlack is var way && way > trigger.Reach)
        {
            yield return Fault(light, TriggerFaultKind.OutOfRange) with { Range = (way, trigger.Reach) };
        }
    }

    private IEnumerable<TriggerFault> BySight(LightPlan light, TriggerSpec trigger)
    {
        var seen = _lights.Where(other => other.FiredBy is { Kind: TriggerKind.RadioReceiver or TriggerKind.Cord or TriggerKind.Hand }).ToList();
        if (seen.Count == 0)
        {
            yield return Fault(light, TriggerFaultKind.NothingToSee);
        }
        else if (seen.Select(other => _ways.Between(light, other)).Min() is var way && way > trigger.Reach)
        {
            yield return Fault(light, TriggerFaultKind.OutOfRange) with { Range = (way, trigger.Reach) };
        }
    }

    private IEnumerable<TriggerFault> ByHand(LightPlan light) =>
        _exposures.Any(exposure => exposure.Shutter.Seconds < LeastByHand) ? [Fault(light, TriggerFaultKind.ShutterTooShort)] : [];

    private bool SharesGroup(LightPlan one, LightPlan other) =>
        one.FiredBy is { Kind: TriggerKind.RadioReceiver } && other.FiredBy is { Kind: TriggerKind.RadioReceiver } && _setUp.Lights[one.Place].Group == _setUp.Lights[other.Place].Group;

    private bool DiffersInPower(LightPlan one, LightPlan other) => _exposures.Any(exposure =>
        exposure.Lights.First(light => light.Place == one.Place).Power != exposure.Lights.First(light => light.Place == other.Place).Power);

    private TriggerSpec? TriggerOf(LightPlan light) => _plan.Kit.TriggerOf(_setUp.Lights[light.Place]);

    private TriggerFault Fault(LightPlan light, TriggerFaultKind kind) => new(kind, _setUp.Name, light.Flash, light.Role, light.Place) { Trigger = light.FiredBy?.Trigger };
}
