import { type Unit, unit } from '../unit';

/** Units of time in seconds. */
export const timeUnits: readonly Unit[] = [
  unit('time', 's', 'second', '1', { accepted: 'sec, secs, second(|s)' }),
  unit('time', 'ms', 'millisecond', '0.001', { accepted: 'msec, msecs, millisecond(|s)' }),
  unit('time', 'min', 'minute', '60', { accepted: 'mins, MIN, MINS, minute(|s)' }),
  unit('time', 'h', 'hour', '3600', { accepted: 'hr, hrs, hour(|s)' }),
  unit('time', 'd', 'day', '86400', { accepted: 'day(|s)' }),
];

/** Units of rotational speed in revolutions per minute. */
export const rotationalSpeedUnits: readonly Unit[] = [
  unit('rotational-speed', 'rpm', 'revolution per minute', '1', {
    also: 'r/min, rev/min',
    accepted: 'RPM, rpms, revs/min, revolution(|s) per minute, rev(|s) per minute, turn(|s) per minute',
  }),
  unit('rotational-speed', 'min⁻¹', 'reciprocal minute', '1', { also: '1/min', accepted: 'min-1, min^-1' }),
  unit('rotational-speed', 's⁻¹', 'reciprocal second', '60', {
    also: '1/s, r/s, rev/s',
    accepted: 's-1, s^-1, rps, revs/s, revolution(|s) per second',
  }),
  unit('rotational-speed', 'rad/s', 'radian per second', '9.549296585513720146133025802351', {
    accepted: 'radian(|s) per second, rad/sec',
  }),
  unit('rotational-speed', 'Hz', 'hertz', '60', { accepted: 'hertz' }),
];

/** Units of speed in metres per second. */
export const speedUnits: readonly Unit[] = [
  unit('speed', 'm/s', 'metre per second', '1', { accepted: 'm/sec, mps, met(re|er)(|s) per second, m·s⁻¹' }),
  unit('speed', 'm/min', 'metre per minute', '1/60', { accepted: 'met(re|er)(|s) per minute' }),
  unit('speed', 'mm/s', 'millimetre per second', '0.001', { accepted: 'mm/sec, millimet(re|er)(|s) per second' }),
  unit('speed', 'mm/min', 'millimetre per minute', '1/60000', { accepted: 'millimet(re|er)(|s) per minute' }),
  unit('speed', 'km/h', 'kilometre per hour', '5/18', { accepted: 'kph, kmh, km/hr, kilomet(re|er)(|s) per hour' }),
  unit('speed', 'in/s', 'inch per second', '0.0254', { accepted: 'in/sec, ips, inch(|es) per second' }),
  unit('speed', 'ft/s', 'foot per second', '0.3048', { accepted: 'ft/sec, fps, (foot|feet) per second' }),
  unit('speed', 'ft/min', 'foot per minute', '0.00508', { accepted: 'fpm, (foot|feet) per minute' }),
  unit('speed', 'mi/h', 'mile per hour', '0.44704', { also: 'mph', accepted: 'MPH, mile(|s) per hour' }),
];
