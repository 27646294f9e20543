using UnitsNet;

namespace Lugwork.Benchmarks.Processes;

/// <summary>The lengths of the same bicycle as UnitsNet quantities made from numbers, and the joints' predicates over them.</summary>
internal readonly struct UnitsBicycle
{
    private readonly Length _rearEnd;
    private readonly Length _rearAxle;
    private readonly Length _forkEnd;
    private readonly Length _forkAxle;
    private readonly Length _rearHub;
    private readonly Length _rearHubAxle;
    private readonly Length _frontHub;
    private readonly Length _frontHubAxle;
    private readonly Length _rimSeat;
    private readonly Length _tyreSeat;
    private readonly Length _inner;
    private readonly Length _tyre;
    private readonly Length _body;
    private readonly Length _cassette;
    private readonly Length _mount;
    private readonly Length _rotor;
    private readonly Length _largestRotor;
    private readonly Length _bore;
    private readonly Length _post;
    private readonly Length _postLength;
    private readonly Length _mark;
    private readonly Length _least;
    private readonly Length _most;
    private readonly Length _insertion;
    private readonly Length _headUpper;
    private readonly Length _headLower;
    private readonly Length _cupUpper;
    private readonly Length _cupLower;
    private readonly Length _steerer;
    private readonly Length _headsetSteerer;
    private readonly Length _stemClamp;
    private readonly Length _crownSeat;
    private readonly Length _crownRace;
    private readonly Length _stemBar;
    private readonly Length _bar;
    private readonly Length _tubeOutside;
    private readonly Length _collar;
    private readonly Length _rail;
    private readonly Length _railClamp;
    private readonly Length _shell;
    private readonly Length _narrowest;
    private readonly Length _widest;
    private readonly Length _spindle;
    private readonly Length _bearing;
    private readonly Length _pedal;
    private readonly Length _pedalHole;
    private readonly Length _frontPitch;
    private readonly Length _frontAxlePitch;
    private readonly Length _rearPitch;
    private readonly Length _rearAxlePitch;
    private readonly Length _largestTyre;
    private readonly Length _chain;
    private readonly Length _sprockets;
    private readonly Length _rings;
    private readonly Length _cage;
    private readonly Length _hanger;
    private readonly Length _hangerBolt;
    private readonly Length _fork;
    private readonly Length _longestFork;
    private readonly Length _pitch;
    private readonly Length _shifterPitch;

    public UnitsBicycle(double post)
    {
        _rearEnd = _rearHub = Length.FromMillimeters(142);
        _forkEnd = _frontHub = Length.FromMillimeters(100);
        _rearAxle = _rearHubAxle = _forkAxle = _frontHubAxle = Length.FromMillimeters(12);
        _rimSeat = _tyreSeat = Length.FromMillimeters(622);
        _inner = Length.FromMillimeters(19);
        _tyre = Length.FromMillimeters(37);
        _body = _cassette = Length.FromMillimeters(34.9);
        _mount = _rotor = Length.FromMillimeters(160);
        _largestRotor = Length.FromMillimeters(180);
        _bore = Length.FromMillimeters(27.2);
        _post = Length.FromMillimeters(post);
        _postLength = Length.FromMillimeters(350);
        _mark = Length.FromMillimeters(75);
        _least = Length.FromMillimeters(80);
        _most = Length.FromMillimeters(210);
        _insertion = Length.FromMillimeters(110);
        _headUpper = Length.FromMillimeters(44);
        _headLower = Length.FromMillimeters(56);
        _cupUpper = Length.FromMillimeters(44);
        _cupLower = Length.FromMillimeters(56);
        _steerer = Length.FromMillimeters(28.6);
        _headsetSteerer = Length.FromMillimeters(28.6);
        _stemClamp = Length.FromMillimeters(28.6);
        _crownSeat = Length.FromMillimeters(39.8);
        _crownRace = Length.FromMillimeters(39.8);
        _stemBar = Length.FromMillimeters(31.8);
        _bar = Length.FromMillimeters(31.8);
        _tubeOutside = Length.FromMillimeters(31.8);
        _collar = Length.FromMillimeters(31.8);
        _rail = Length.FromMillimeters(7);
        _railClamp = Length.FromMillimeters(7);
        _shell = Length.FromMillimeters(68);
        _narrowest = Length.FromMillimeters(68);
        _widest = Length.FromMillimeters(73);
        _spindle = Length.FromMillimeters(24);
        _bearing = Length.FromMillimeters(24);
        _pedal = Length.FromMillimeters(14.2875);
        _pedalHole = Length.FromMillimeters(14.2875);
        _frontPitch = Length.FromMillimeters(1.5);
        _frontAxlePitch = Length.FromMillimeters(1.5);
        _rearPitch = Length.FromMillimeters(1.5);
        _rearAxlePitch = Length.FromMillimeters(1.5);
        _largestTyre = Length.FromMillimeters(42);
        _chain = Length.FromMillimeters(6.6);
        _sprockets = Length.FromMillimeters(6.6);
        _rings = Length.FromMillimeters(6.6);
        _cage = Length.FromMillimeters(6.6);
        _hanger = Length.FromMillimeters(10);
        _hangerBolt = Length.FromMillimeters(10);
        _fork = Length.FromMillimeters(395);
        _longestFork = Length.FromMillimeters(405);
        _pitch = _shifterPitch = Length.FromMillimeters(4.34);
    }

    /// <summary>Every joint fits.</summary>
    public bool Fits()
    {
        Length close = Length.FromMillimeters(0.000001);
        bool wheels = Same(_rearEnd, _rearHub, close) & Same(_rearAxle, _rearHubAxle, close) & Same(_forkEnd, _frontHub, close) & Same(_forkAxle, _frontHubAxle, close);
        bool tyres = Same(_rimSeat, _tyreSeat, close) & _inner <= Length.FromMillimeters(19) & _tyre >= Length.FromMillimeters(22) & _tyre <= Length.FromMillimeters(63);
        bool driven = Same(_body, _cassette, close);
        bool brakes = Same(_mount, _rotor, close) & _rotor <= _largestRotor;
        bool post = Same(_bore, _post, close) & _mark <= _most & _least <= _most & _insertion <= _postLength;
        bool depth = _insertion >= _mark & _insertion >= _least & _insertion <= _most & _insertion >= 2 * _post;
        bool head = Same(_headUpper, _cupUpper, close) & Same(_headLower, _cupLower, close) & Same(_steerer, _headsetSteerer, close) & Same(_crownSeat, _crownRace, close) & _headUpper >= _steerer & _headLower >= _crownSeat;
        bool cockpit = Same(_steerer, _stemClamp, close) & Same(_stemBar, _bar, close) & Same(_tubeOutside, _collar, close) & Same(_rail, _railClamp, close);
        bool cranks = _shell >= _narrowest & _shell <= _widest & Same(_spindle, _bearing, close) & _shell <= Length.FromMillimeters(73) & Same(_pedal, _pedalHole, close);
        bool axles = Same(_frontPitch, _frontAxlePitch, close) & Same(_rearPitch, _rearAxlePitch, close);
        bool room = _tyre <= _largestTyre & _inner <= (0.55 * _tyre) + (_largestTyre - _tyre);
        bool chain = Same(_chain, _sprockets, close) & Same(_chain, _rings, close) & Same(_chain, _cage, close) & Same(_hanger, _hangerBolt, close);
        bool later = _fork <= _longestFork & Same(_pitch, _shifterPitch, close);
        return wheels & tyres & driven & brakes & post & depth & head & cockpit & cranks & axles & room & chain & later;
    }

    private static bool Same(Length a, Length b, Length close) => a.Equals(b, close);
}
