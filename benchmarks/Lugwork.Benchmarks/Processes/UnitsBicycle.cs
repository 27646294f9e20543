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
        return wheels & tyres & driven & brakes & post & depth;
    }

    private static bool Same(Length a, Length b, Length close) => a.Equals(b, close);
}
